import { usualSureness } from '#core/chance/grade';
import { findTask } from '#core/exercises/exercises';
import { createGrowingTrack } from '#core/keypoints/createGrowingTrack';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { MeasuredRepetition, Measurement, Setup } from '#core/measurement/measurement';
import { measureSet, type SetMeasurement, type TimedSetup } from '#core/measurement/measureSet';
import type { Limits } from '#core/protocol/limits';
import { bandAt } from '#core/scoring/bandAt';
import { judge, type Judgement } from '#core/scoring/judge';
import { kneeStateAt, type KneeState } from '#core/scoring/kneeStateAt';
import { createLiveCounter } from '#core/segmentation/createLiveCounter';
import { createMovementReader } from './createMovementReader';
import type { LiveFrame } from './liveFrame';

/** What must be known before a set begins. */
export interface LiveSetOptions {
  setup: Setup;
  limits: Limits;
  /** Size of the camera's picture as displayed, px; a frame of another size counts as one without a person. */
  widthPx: number;
  heightPx: number;
  /** When the set's time begins, ms on the clock of its frames; earlier frames are left out. */
  startMs: number;
  /**
   * Whether the person is still getting ready: nothing is reported before `go`, and nothing from before it
   * counts.
   */
  awaitsGo?: boolean;
}

/** Something that happened in a set; times are ms on the clock of its frames. */
export type LiveSetEvent =
  /**
   * The number of complete repetitions; can go down where a later movement shows that an earlier one was only
   * half of it.
   */
  | { kind: 'counted'; count: number; timeMs: number }
  /** A complete repetition, the count-th, was judged as the review judges the frames so far. */
  | {
      kind: 'judged';
      count: number;
      timeMs: number;
      repetition: MeasuredRepetition;
      judgement: Judgement;
    }
  /** How the knee stands to its limits just now, a few times a second; null where that is not known. */
  | { kind: 'knee'; knee: LiveKnee | null };

/** What the review would say of the knee at the last frame. */
export type LiveKnee = Pick<KneeState, 'verdict' | 'direction'>;

/** A set as the review sees it. */
export interface FinishedSet {
  track: KeypointTrack;
  measurement: SetMeasurement;
  /** One a repetition. */
  judgements: Judgement[];
  /** Complete repetitions. */
  count: number;
}

export interface LiveSet {
  push(frame: LiveFrame): LiveSetEvent[];
  /** @param timeMs  on the clock of the frames; no effect on a set that has begun */
  go(timeMs: number): void;
  /** Measures all frames so far; null before 'go', and where the knee or its error band is not known. */
  knee(): LiveKnee | null;
  finish(): FinishedSet;
}

/** The count is reported at once; the verdict waits for the end of the movement, this long after the count, ms. */
const settleMs = 400;
/** Where the review does not yet see what the counter saw, it measures again after this time, ms ... */
const againMs = 250;
/** ... up to this long after, ms. */
const patienceMs = 2000;
/** Anything that the counter missed is found after this time at the latest, ms. */
const sweepMs = 5000;

/**
 * Counts and judges a set while it is done.
 *
 * What is reported is always the review's own result over the frames so far; a cheap counter only decides
 * when to measure. So the last count is the review's count of the same frames, and each verdict the review's
 * verdict at that moment.
 */
export function createLiveSet({
  setup: asked,
  limits,
  widthPx,
  heightPx,
  startMs,
  awaitsGo = false,
}: LiveSetOptions): LiveSet {
  const track = createGrowingTrack(widthPx, heightPx);
  const readMovement = createMovementReader(asked);
  const counter = createLiveCounter(findTask(asked.task));
  let setup: TimedSetup = asked;
  let isBegun = !awaitsGo;
  let noticed = 0;
  /** Of those, what came before 'go'. */
  let rehearsed = 0;
  let noticedMs = -Infinity;
  let lookedMs = startMs;
  let counted = 0;
  let judged = 0;
  let judgeMs = Infinity;

  const notice = (timeMs: number, row: LiveFrame['row']) => {
    const { movementPx, legLengthPx } = readMovement(track.append(timeMs - startMs, row));
    if (legLengthPx === null) return;
    const count = counter.push(timeMs - startMs, movementPx, legLengthPx);
    if (count > noticed) noticedMs = timeMs;
    noticed = count;
  };
  const isLookDue = (timeMs: number) =>
    noticedMs === timeMs ||
    judgeMs <= timeMs ||
    timeMs - lookedMs >= sweepMs ||
    (noticed - rehearsed > counted && timeMs - noticedMs <= patienceMs && timeMs - lookedMs >= againMs);

  const look = (timeMs: number): LiveSetEvent[] => {
    lookedMs = timeMs;
    const measurement = measureSet(track.view(), setup);
    const complete = completeOf(measurement);
    const events: LiveSetEvent[] = [];
    if (complete.length !== counted) {
      counted = complete.length;
      judged = Math.min(judged, counted);
      if (counted > judged && judgeMs === Infinity) judgeMs = timeMs + settleMs;
      events.push({ kind: 'counted', count: counted, timeMs });
    }
    if (judgeMs <= timeMs) {
      judgeMs = Infinity;
      complete.slice(judged).forEach((repetition) => {
        const judgement = judge(repetition, measurement, limits);
        events.push({ kind: 'judged', count: ++judged, timeMs, repetition, judgement });
      });
    }
    return events;
  };
  return {
    push({ timeMs, row, ...size }) {
      if (timeMs < startMs) return [];
      const isSameSize = size.widthPx === widthPx && size.heightPx === heightPx;
      notice(timeMs, isSameSize ? row : null);
      return isBegun && isLookDue(timeMs) ? look(timeMs) : [];
    },
    go(timeMs) {
      if (isBegun) return;
      isBegun = true;
      rehearsed = noticed;
      setup = { ...asked, goMs: Math.max(0, timeMs - startMs) };
    },
    knee() {
      if (!isBegun) return null;
      const measurement = measureSet(track.view(), setup);
      const sample = measurement.timesMs.length - 1;
      if (sample < 0 || bandAt(measurement, sample, 'most') === null) return null;
      const { verdict, direction, deg } = kneeStateAt(
        measurement,
        limits,
        measurement.timesMs[sample]!,
        usualSureness,
      );
      return deg === null ? null : { verdict, direction };
    },
    finish() {
      const kept = track.copy();
      const measurement = measureSet(kept, setup);
      const judgements = measurement.repetitions.map((repetition) => judge(repetition, measurement, limits));
      return { track: kept, measurement, judgements, count: completeOf(measurement).length };
    },
  };
}

function completeOf({ repetitions }: Measurement): MeasuredRepetition[] {
  return repetitions.filter(({ completeness }) => completeness === 'complete');
}
