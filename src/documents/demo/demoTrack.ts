import { mirrorTrack } from '#core/correction/mirrorTrack';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { frameCount, trackPart, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { curveValue } from '#core/measurement/curve';
import { measure } from '#core/measurement/measure';
import type { Measurement, Setup } from '#core/measurement/measurement';
import { otherSide, type Side } from '#core/protocol/side';
import type { SeededRandom } from '#core/seededRandom';
import type { RecordingDocument } from '../recording/recordingDocument';
import { recordingTrack } from '../recording/recordingTrack';

/** A film of some repetitions of an invented person, whose knee is moved for each set. */
export interface DemoFilm {
  track: KeypointTrack;
  setup: Setup;
  measurement: Measurement;
  legLengthPx: number;
}

/** As many as a set of the demo has: enough for a mean with an error, few enough to be measured at once. */
export const demoRepetitions = 4;

/** Between the repetitions of a set, degrees, one standard deviation. Plausible, invented. */
const scatterDeg = 1.6;
/** Of each point of the working leg, px, one standard deviation: as a network trembles. */
const tremblePx = 0.3;
/** Share of the loaded time in which the knee moves to its place, and back. */
const rampShare = 0.3;
/** A shift shows less than a leg that is straight and square would: found by trying with the example. */
const seenShare = 1.2;

/** The first repetitions of the built-in example, in which nobody was filmed. */
export function demoFilm(example: RecordingDocument): DemoFilm {
  const whole = recordingTrack(example);
  const { repetitions, legLengthPx } = example.derived;
  const [last, next] = [repetitions[demoRepetitions - 1], repetitions[demoRepetitions]];
  if (last === undefined || legLengthPx === null)
    throw new RangeError(
      `The example needs ${demoRepetitions} measured repetitions, got ${repetitions.length}.`,
    );
  const endMs = next === undefined ? Infinity : (last.events.endMs + next.events.startMs) / 2;
  const from = whole.timesMs.findIndex((timeMs) => timeMs > endMs);
  const { closer, ...track } = trackPart(whole, 0, from === -1 ? frameCount(whole) : from);
  const { task, side } = example.setup;
  const setup = { task, side };
  return { track, setup, measurement: measure(track, setup), legLengthPx };
}

/**
 * The film with the working knee moved sideways in each repetition, so that its peaks scatter round a value. What is
 * then measured is near that value, not equal to it.
 *
 * @param peakDeg  degrees, inward positive
 */
export function demoTrack(film: DemoFilm, side: Side, peakDeg: number, random: SeededRandom): KeypointTrack {
  const { track, setup, measurement, legLengthPx } = film;
  const xPx = Float32Array.from(track.xPx);
  const [hip, knee, ankle] = (['hip', 'knee', 'ankle'] as const).map((joint) =>
    keypointNames.indexOf(`${setup.side}_${joint}`),
  ) as [number, number, number];
  // Seen from the front, the right knee goes inward to the picture's right.
  const inward = setup.side === 'right' ? 1 : -1;
  // A shift d turns thigh and shank, half a leg each, by d / (leg / 2) radians each.
  const pxPerDeg = seenShare * (legLengthPx / 4) * (Math.PI / 180);
  const wanted = measurement.repetitions.map(({ events }) => ({
    deg: peakDeg + scatterDeg * random.gaussian(),
    from: events.seatOffMs ?? events.startMs,
    until: events.seatContactMs ?? events.endMs,
  }));
  for (let frame = 0; frame < frameCount(track); frame++) {
    const at = frame * keypointCount;
    for (const joint of [hip, knee, ankle]) xPx[at + joint]! += tremblePx * random.gaussian();
    const timeMs = track.timesMs[frame]!;
    for (const { deg, from, until } of wanted) {
      const share = (timeMs - from) / (until - from);
      if (share <= 0 || share >= 1) continue;
      const shiftDeg = deg * ramped(share) - angleAt(measurement, timeMs);
      xPx[at + knee]! += inward * pxPerDeg * shiftDeg;
    }
  }
  const moved = { ...track, xPx };
  return side === setup.side ? moved : mirrorTrack(moved);
}

/** The knee angle that the film has of itself, degrees; 0 where there is none. */
function angleAt({ curves, timesMs, rateHz }: Measurement, timeMs: number): number {
  const sample = Math.round(((timeMs - timesMs[0]!) * rateHz) / 1000);
  return curveValue(curves['knee-angle'], Math.max(0, Math.min(timesMs.length - 1, sample))) ?? 0;
}

/** 0 at the ends, 1 in the middle, without a kink. */
function ramped(share: number): number {
  const near = Math.min(share, 1 - share) / rampShare;
  return near >= 1 ? 1 : (1 - Math.cos(Math.PI * near)) / 2;
}

/** How a set of the demo was set up. */
export function demoSetup({ setup }: DemoFilm, side: Side): Setup {
  return { ...setup, side: side === setup.side ? setup.side : otherSide(setup.side) };
}
