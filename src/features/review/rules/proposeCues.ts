import { median, rollup, sum } from 'd3-array';
import { limitEnds } from '#core/measures/limitEnd';
import type { Limits } from '#core/protocol/limits';
import { beyondLimit } from '#core/scoring/beyondLimit';
import { chanceWithin } from '#core/scoring/chanceWithin';
import { decidingMeasure } from '#core/scoring/deciding';
import { heldExtremes, type MeasureJudgement } from '#core/scoring/judgeMeasure';
import { verdictSide } from '#core/scoring/verdict';
import type { CountedRepetition } from './countedRepetitions';

export interface ProposedCue {
  index: number;
  role: 'worst' | 'typical' | 'model';
}

/** One way of one measure, such as 'knee-angle most'. */
type Fault = string;

/**
 * The three most telling repetitions: the one that went farthest beyond its limit, one that shows the usual
 * fault, and the best as a model. A repetition is proposed once; without a fault, the model alone.
 *
 * The usual fault is the one that is expected in the most repetitions, by the chances that their error bands leave.
 */
export function proposeCues(counted: readonly CountedRepetition[], limits: Limits): ProposedCue[] {
  const measured = counted.flatMap(({ index, judgement }) => {
    const beyond = beyondLimit(judgement, limits);
    const { verdict } = judgement;
    if (beyond === null || verdict === 'not-measured') return [];
    return [{ index, side: verdictSide(verdict), fault: faultOf(decidingMeasure(judgement)), beyond }];
  });
  const faults = measured.filter(({ side }) => side !== 'in').sort((a, b) => b.beyond - a.beyond);
  const proposed: ProposedCue[] = [];
  const [worst] = faults;
  if (worst !== undefined) proposed.push({ index: worst.index, role: 'worst' });
  const expected = expectedFaults(counted, limits);
  const others = faults.filter(({ index }) => index !== worst?.index);
  const most = Math.max(...others.map(({ fault }) => expected.get(fault) ?? 0));
  const usual = others.filter(({ fault }) => (expected.get(fault) ?? 0) === most);
  const middle = median(usual, ({ beyond }) => beyond) ?? 0;
  const [typical] = usual.sort((a, b) => Math.abs(a.beyond - middle) - Math.abs(b.beyond - middle));
  if (typical !== undefined) proposed.push({ index: typical.index, role: 'typical' });
  const taken = new Set(proposed.map(({ index }) => index));
  const [best] = measured
    .filter(({ index, side }) => side !== 'out' && !taken.has(index))
    .sort((a, b) => a.beyond - b.beyond);
  if (best !== undefined) proposed.push({ index: best.index, role: 'model' });
  return proposed;
}

/** In how many repetitions each fault is expected. */
function expectedFaults(counted: readonly CountedRepetition[], limits: Limits): Map<Fault, number> {
  const chances = counted.flatMap(({ repetition: { ranges }, judgement }) =>
    judgement.measures
      .filter(({ extreme }) => extreme !== null)
      .flatMap(({ measure }) => {
        const held = heldExtremes(measure, ranges[measure]);
        return limitEnds.map((end) => ({
          fault: faultOf({ measure, end }),
          chance: 1 - chanceWithin({ [end]: held[end] }, limits[measure] ?? {}),
        }));
      }),
  );
  return rollup(
    chances,
    (ofFault) => sum(ofFault, ({ chance }) => chance),
    ({ fault }) => fault,
  );
}

function faultOf({ measure, end }: Pick<MeasureJudgement, 'measure' | 'end'>): Fault {
  return `${measure} ${end}`;
}
