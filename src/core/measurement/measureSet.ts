import type { KeypointTrack } from '../keypoints/keypointTrack';
import { measure } from './measure';
import type { MeasuredRepetition, Measurement, Setup } from './measurement';

/** What is measured, and from when a recording counts as the set. */
export interface TimedSetup extends Setup {
  /** When the set was started ('go'), ms on the recording's clock; left out where the whole recording is the set. */
  goMs?: number | undefined;
}

export interface SetMeasurement extends Measurement {
  setup: TimedSetup;
}

/** People who hear the countdown may be ahead of 'go' by this much, ms; common practice, no source. */
const aheadMs = 500;

/**
 * Measures a recorded set: a repetition belongs to it where the leg takes its load after 'go'. Quiet
 * standing, sitting down and rehearsing before it show the view and the leg, but are not repetitions.
 *
 * @throws never; see measure
 */
export function measureSet(track: KeypointTrack, setup: TimedSetup): SetMeasurement {
  const measurement = { ...measure(track, setup), setup };
  const { goMs } = setup;
  if (goMs === undefined) return measurement;
  const repetitions = measurement.repetitions
    .filter(({ events }) => isOfSet(events, goMs))
    .map((repetition, index) => ({ ...repetition, number: index + 1 }));
  const isEmptied = repetitions.length === 0 && measurement.repetitions.length > 0;
  const notes = isEmptied ? [...measurement.notes, { kind: 'no-repetitions' as const }] : measurement.notes;
  return { ...measurement, repetitions, notes };
}

/** Whether a repetition takes its load (seat-off, where there is a seat and it was seen) after 'go'. */
export function isOfSet({ seatOffMs, startMs }: MeasuredRepetition['events'], goMs: number): boolean {
  return (seatOffMs ?? startMs) >= goMs - aheadMs;
}
