import { gradeOf, sideOf, usualSureness, type Sureness } from '../chance/grade';
import type { TaskId } from '../exercises/exercises';
import { curveValue } from '../measurement/curve';
import { isSideDoubtful, type MeasuredRepetition, type Measurement } from '../measurement/measurement';
import { kneeBendDeg } from '../measures/kneeBend';
import { chanceWithin } from '../scoring/chanceWithin';
import { miniSquat } from './miniSquat';

/** The exercise that a recording of a mini squat is of. */
export const bendTask: TaskId = 'single-leg-squat';
/** Bends of the test. */
export const bendsOfTest = 5;
/** The knee is inward of the foot beyond the line of the foot, which stands for the second toe: our choice, no source. */
const overTheFoot = { most: 0 };

/** One bend of a mini squat, in order of time. */
export interface FilmedBend {
  /** When it began, ms of the recording. */
  startMs: number;
  /** Whether the knee went inward of the foot; null where that can't be told, or was not measured. */
  isInward: boolean | null;
  /** About how far the knee bent, degrees; null where it was not measured. */
  bendDeg: number | null;
}

/** What a recording says of a mini squat, or why it says nothing. */
export type BendCount =
  | {
      kind: 'counted';
      /** The five that count. */
      bends: FilmedBend[];
      /** How many went inward; null where of one it is not known. */
      inward: number | null;
      /** Null where those not known could decide it either way. */
      found: ReturnType<typeof miniSquat>;
      /** Complete bends after the fifth, which do not count. */
      more: number;
    }
  | { kind: 'other-leg' }
  | { kind: 'too-few-bends'; bends: number };

/**
 * In how many of the first five complete bends the knee was inward of the foot at the lowest point, by 'knee over foot'
 * and its error band.
 *
 * @param excluded  one a repetition: why it does not count; null where it counts
 * @param sureness  how sure it has to be before a bend is counted or not
 * Missing: no number where one of the five can't be told; none at all with fewer, or where the other leg seems to have
 *   worked
 * Source:  Ageberg 2010 for the test, which looks at the knee against the second toe (from memory); the camera's line and
 *   how sure it has to be: our choice
 */
export function countInwardBends(
  measurement: Measurement,
  excluded: readonly (string | null)[],
  sureness: Sureness = usualSureness,
): BendCount {
  const complete = measurement.repetitions.filter(
    ({ completeness }, index) => completeness === 'complete' && (excluded[index] ?? null) === null,
  );
  if (complete.length < bendsOfTest) return { kind: 'too-few-bends', bends: complete.length };
  if (isSideDoubtful(measurement)) return { kind: 'other-leg' };
  const bends = complete.slice(0, bendsOfTest).map((one) => filmedBend(one, measurement, sureness));
  const isInward = bends.map((bend) => bend.isInward);
  return {
    kind: 'counted',
    bends,
    inward: isInward.includes(null) ? null : isInward.filter(Boolean).length,
    found: miniSquat(isInward),
    more: complete.length - bendsOfTest,
  };
}

/** Where the hip is lowest, which is where the eye looks; the band there is the wider one of the bend's two extremes. */
function filmedBend(
  { events, ranges }: MeasuredRepetition,
  { curves }: Pick<Measurement, 'curves'>,
  sureness: Sureness,
): FilmedBend {
  const { startMs } = events;
  const lowest = ranges.depth.max;
  const { min, max } = ranges['knee-over-foot'];
  if (lowest === null || min === null || max === null) return { startMs, isInward: null, bendDeg: null };
  const bendDeg = kneeBendDeg(lowest.value);
  const value = curveValue(curves['knee-over-foot'], lowest.sample);
  if (value === null) return { startMs, isInward: null, bendDeg };
  const there = { value, band: Math.max(min.band, max.band) };
  const side = sideOf(gradeOf(chanceWithin({ least: there, most: there }, overTheFoot), sureness));
  return { startMs, isInward: side === null ? null : side === 'out', bendDeg };
}
