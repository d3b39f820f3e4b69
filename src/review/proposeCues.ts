import { median } from 'd3-array';
import type { Limits } from '../protocol/limits';
import type { Direction } from '../scoring/judge';
import type { CountedRepetition } from './countedRepetitions';

export interface ProposedCue {
  index: number;
  role: 'worst' | 'typical' | 'model';
  /** The way the knee went; null for the model. */
  direction: Direction | null;
  timeMs: number;
}

/**
 * The three repetitions that tell most: the one that went farthest beyond its limit, the one most like the usual fault,
 * and the best as a model. A repetition is proposed once; without a fault, the model alone.
 */
export function proposeCues(counted: readonly CountedRepetition[], limits: Limits): ProposedCue[] {
  const measured = counted.flatMap(({ index, judgement: { verdict, direction, worst } }) => {
    if (worst === null || direction === null) return [];
    const excessDeg =
      direction === 'inward' ? worst.value - limits.kneeInwardDeg : -worst.value - limits.kneeOutwardDeg;
    return [{ index, verdict, direction, excessDeg, timeMs: worst.timeMs }];
  });
  const faults = measured
    .filter(({ verdict }) => verdict !== 'in-line')
    .sort((a, b) => b.excessDeg - a.excessDeg);
  const proposed: ProposedCue[] = [];
  const [worst] = faults;
  if (worst !== undefined) {
    const { index, direction, timeMs } = worst;
    proposed.push({ index, role: 'worst', direction, timeMs });
  }
  const inward = faults.filter(({ direction }) => direction === 'inward');
  const usual =
    inward.length * 2 >= faults.length ? inward : faults.filter((fault) => !inward.includes(fault));
  const middleDeg = median(usual, ({ excessDeg }) => excessDeg) ?? 0;
  const [typical] = usual
    .filter(({ index }) => index !== worst?.index)
    .sort((a, b) => Math.abs(a.excessDeg - middleDeg) - Math.abs(b.excessDeg - middleDeg));
  if (typical !== undefined) {
    const { index, direction, timeMs } = typical;
    proposed.push({ index, role: 'typical', direction, timeMs });
  }
  const taken = new Set(proposed.map(({ index }) => index));
  const [best] = measured
    .filter(({ index, verdict }) => verdict !== 'out-of-line' && !taken.has(index))
    .sort((a, b) => a.excessDeg - b.excessDeg);
  if (best !== undefined) {
    proposed.push({ index: best.index, role: 'model', direction: null, timeMs: best.timeMs });
  }
  return proposed;
}
