import { group, max, median } from 'd3-array';
import type { Limits } from '#core/protocol/limits';
import { beyondLimit } from '#core/scoring/beyondLimit';
import { decidingWay } from '#core/scoring/deciding';
import { verdictSide } from '#core/scoring/verdict';
import type { CountedRepetition } from './countedRepetitions';

export interface ProposedCue {
  index: number;
  role: 'worst' | 'typical' | 'model';
}

/**
 * The three most telling repetitions: the one that went farthest beyond its limit, the one most like the
 * usual fault, and the best as a model. A repetition is proposed once; without a fault, the model alone.
 */
export function proposeCues(counted: readonly CountedRepetition[], limits: Limits): ProposedCue[] {
  const measured = counted.flatMap(({ index, judgement }) => {
    const beyond = beyondLimit(judgement, limits);
    const { verdict, decidedBy } = judgement;
    if (beyond === null || verdict === 'not-measured') return [];
    return [{ index, side: verdictSide(verdict), fault: decidingWay(judgement) ?? decidedBy, beyond }];
  });
  const faults = measured.filter(({ side }) => side !== 'in').sort((a, b) => b.beyond - a.beyond);
  const proposed: ProposedCue[] = [];
  const [worst] = faults;
  if (worst !== undefined) proposed.push({ index: worst.index, role: 'worst' });
  const alike = [...group(faults, ({ fault }) => fault).values()];
  const mostAlike = max(alike, ({ length }) => length);
  const usual = alike.find(({ length }) => length === mostAlike) ?? [];
  const middle = median(usual, ({ beyond }) => beyond) ?? 0;
  const [typical] = usual
    .filter(({ index }) => index !== worst?.index)
    .sort((a, b) => Math.abs(a.beyond - middle) - Math.abs(b.beyond - middle));
  if (typical !== undefined) proposed.push({ index: typical.index, role: 'typical' });
  const taken = new Set(proposed.map(({ index }) => index));
  const [best] = measured
    .filter(({ index, side }) => side !== 'out' && !taken.has(index))
    .sort((a, b) => a.beyond - b.beyond);
  if (best !== undefined) proposed.push({ index: best.index, role: 'model' });
  return proposed;
}
