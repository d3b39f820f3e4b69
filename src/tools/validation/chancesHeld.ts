import { range } from 'd3-array';
import { chanceBeyond } from './chanceBeyond';
import type { RepetitionComparison } from './compareClip';
import type { LeftOutClip } from './leaveClipsOut';

/** Limits that each peak is held against, degrees inward. */
const limitsDeg = range(4, 19);
/** Where one group of chances ends and the next begins. */
const edges = [0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99, 1];

/** Comparisons whose likelier side was given a chance from `from` to below `to`; the last group holds 1 as well. */
export interface ChanceGroup {
  from: number;
  to: number;
  comparisons: number;
  /** Of these, true peaks on the likelier side, 0 to 1; null where there is none. */
  right: number | null;
}

/**
 * How often the likelier side of a limit is the true one, by the chance that was given: 80 of 100 where it was 0.8.
 * Each measured peak is held against each limit from 4 to 18 degrees, with the band that was fitted without its clip.
 */
export function chancesHeld(
  clips: readonly LeftOutClip<{ repetitions: readonly RepetitionComparison[] }>[],
): ChanceGroup[] {
  const told = clips.flatMap(({ clip, factor }) =>
    clip.repetitions.flatMap(({ measuredPeakDeg, bandDeg, truePeakDeg }) =>
      measuredPeakDeg === null || bandDeg === null
        ? []
        : limitsDeg.map((limitDeg) => {
            const beyond = chanceBeyond(measuredPeakDeg, factor * bandDeg, limitDeg);
            const isRight = beyond > 0.5 === truePeakDeg > limitDeg;
            return { chance: Math.max(beyond, 1 - beyond), isRight };
          }),
    ),
  );
  return edges.slice(1).map((to, index) => {
    const from = edges[index]!;
    const group = told.filter(({ chance }) => chance >= from && (chance < to || to === 1));
    const right = group.filter(({ isRight }) => isRight).length;
    return { from, to, comparisons: group.length, right: group.length === 0 ? null : right / group.length };
  });
}
