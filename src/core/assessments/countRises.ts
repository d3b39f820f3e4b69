import { greatest } from 'd3-array';
import type { TaskId } from '../exercises/exercises';
import type { KeypointTrack } from '../keypoints/keypointTrack';
import { isSideDoubtful, type MeasuredRepetition, type Measurement } from '../measurement/measurement';
import { smoothPoints } from '../measurement/smoothPoints';
import type { AssessmentId } from './assessments';

/** Tests whose result a recording of one set can give. */
export const riseTests = [
  'one-leg-rise',
  'rise-30-s',
  'rise-five-times',
] as const satisfies readonly AssessmentId[];
export type RiseTest = (typeof riseTests)[number];
/** The exercise that such a recording is of. */
export const riseTask: TaskId = 'single-leg-sit-to-stand';

/** Where the hips are not seen for longer than this, a rise may have been missed, ms. Our choice, no source. */
export const longestUnseenMs = 500;
const halfMinuteMs = 30_000;
/** Of the test that counts to the end. */
const mostRises = 50;
const fiveTimes = 5;

interface Span {
  fromMs: number;
  toMs: number;
}

/** What a recording says of a test, or why it says nothing; times are ms of the recording. */
export type RiseCount =
  | {
      kind: 'counted';
      /** Repetitions, or seconds to 0.1 of the test that is timed. */
      value: number;
      from: Span;
      /** Rises within that time that did not come to standing, or do not count by a correction: when they began. */
      notCounted: number[];
      /** The longest stretch without the hips before or after it, in which more rises may have been made. */
      unseenOutside: Span | null;
    }
  | { kind: 'none-complete' }
  | { kind: 'other-leg' }
  | { kind: 'not-seen'; span: Span }
  | { kind: 'cut-at-start' }
  | { kind: 'cut-at-end' }
  | { kind: 'too-short'; seconds: number }
  | { kind: 'too-few'; rises: number };

/** What a count rests on. */
export interface FilmedRises {
  /** In order of time. */
  rises: readonly (Pick<MeasuredRepetition, 'completeness' | 'events'> & { isExcluded: boolean })[];
  /** When the set was started ('go'); left out where nobody gave a sign. */
  goMs?: number | undefined;
  /** Last instant that was filmed. */
  endMs: number;
  /** Stretches without both hips, the short ones too. */
  unseen: readonly Span[];
  isSideDoubtful: boolean;
}

/**
 * The result of a test of rises from a recording of one leg.
 *
 * One-leg rise: all complete rises, 50 at most. In 30 seconds: those that stand within 30 s of 'go', or of the first
 * movement. Five times: from the first movement to the fifth touch of the seat, s. What a camera in front does not show
 * (whether the other foot touched the floor, a hand helped, the seat was only brushed) is for the eye.
 *
 * Missing: no number where the hips were not seen for longer than half a second in the time that counts, where that time
 *   was not filmed to its end, or where the other leg seems to have worked
 * Source:  common practice, no source; where the clock starts and stops: our choice
 */
export function countRises(test: RiseTest, filmed: FilmedRises): RiseCount {
  const { rises, goMs, endMs } = filmed;
  const complete = rises.filter(({ completeness, isExcluded }) => completeness === 'complete' && !isExcluded);
  const [first] = complete;
  if (first === undefined) return { kind: 'none-complete' };
  if (filmed.isSideDoubtful) return { kind: 'other-leg' };
  if (rises[0]!.completeness === 'cut-at-start') return { kind: 'cut-at-start' };
  const before = goMs === undefined ? [{ fromMs: 0, toMs: first.events.startMs }] : [];
  switch (test) {
    case 'one-leg-rise': {
      const counted = complete.slice(0, mostRises);
      if (counted.length < mostRises && rises.at(-1)!.completeness === 'cut-at-end')
        return { kind: 'cut-at-end' };
      const span = { fromMs: first.events.startMs, toMs: counted.at(-1)!.events.endMs };
      const after = counted.length < mostRises ? [{ fromMs: span.toMs, toMs: endMs }] : [];
      return found(counted.length, span, filmed, [...before, ...after]);
    }
    case 'rise-30-s': {
      const fromMs = goMs ?? first.events.startMs;
      const toMs = fromMs + halfMinuteMs;
      if (endMs < toMs) return { kind: 'too-short', seconds: Math.floor((endMs - fromMs) / 1000) };
      const counted = complete.filter(({ events }) => (events.topMs ?? events.endMs) <= toMs);
      return found(counted.length, { fromMs, toMs }, filmed, before);
    }
    case 'rise-five-times': {
      const fifth = complete[fiveTimes - 1];
      if (fifth === undefined) return { kind: 'too-few', rises: complete.length };
      const fromMs = first.events.startMs;
      const toMs = fifth.events.seatContactMs ?? fifth.events.endMs;
      return found(Math.round((toMs - fromMs) / 100) / 10, { fromMs, toMs }, filmed, before);
    }
  }
}

function found(
  value: number,
  from: Span,
  { rises, unseen }: FilmedRises,
  outside: readonly Span[],
): RiseCount {
  const within = longestUnseen(unseen, from);
  if (within !== null) return { kind: 'not-seen', span: within };
  const notCounted = rises.filter(
    ({ completeness, isExcluded, events: { startMs } }) =>
      (completeness !== 'complete' || isExcluded) && startMs >= from.fromMs && startMs <= from.toMs,
  );
  const beyond = outside.flatMap((span) => longestUnseen(unseen, span) ?? []);
  return {
    kind: 'counted',
    value,
    from,
    notCounted: notCounted.map(({ events }) => events.startMs),
    unseenOutside: greatest(beyond, lengthOf) ?? null,
  };
}

const lengthOf = ({ fromMs, toMs }: Span) => toMs - fromMs;

/** The part of a span in which the hips were unseen for too long; null where they were seen well enough. */
function longestUnseen(unseen: readonly Span[], span: Span): Span | null {
  const gaps = unseen
    .map(({ fromMs, toMs }) => ({ fromMs: Math.max(fromMs, span.fromMs), toMs: Math.min(toMs, span.toMs) }))
    .filter((gap) => lengthOf(gap) > longestUnseenMs);
  return greatest(gaps, lengthOf) ?? null;
}

/** @param excluded  one a repetition: why it does not count; null where it counts */
export function filmedRises(
  track: KeypointTrack,
  measurement: Measurement,
  excluded: readonly (string | null)[],
  goMs: number | undefined,
): FilmedRises {
  const { timesMs, point } = smoothPoints(track);
  const hips = [point('left_hip'), point('right_hip')];
  const isUnseen = (sample: number) => hips.some(({ yPx }) => yPx.missing[sample] !== 0);
  const unseen: Span[] = [];
  let open: Span | null = null;
  timesMs.forEach((timeMs, sample) => {
    if (!isUnseen(sample)) open = null;
    else if (open === null) unseen.push((open = { fromMs: timeMs, toMs: timeMs }));
    else open.toMs = timeMs;
  });
  return {
    rises: measurement.repetitions.map(({ completeness, events }, index) => ({
      completeness,
      events,
      isExcluded: (excluded[index] ?? null) !== null,
    })),
    goMs,
    endMs: timesMs.at(-1) ?? 0,
    unseen,
    isSideDoubtful: isSideDoubtful(measurement),
  };
}
