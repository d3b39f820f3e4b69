import type { KeypointTrack } from '../keypoints/keypointTrack';
import { measure } from '../measurement/measure';
import { isOfSet, measureSet, type SetMeasurement, type TimedSetup } from '../measurement/measureSet';
import { arrangeRepetitions, type ArrangedRepetition } from './arrangeRepetitions';
import type { Correction } from './correction';
import { correctTrack } from './correctTrack';
import { mirrorBends } from './mirrorBends';
import { settleCorrections } from './settleCorrections';

/** A recording measured with its corrections. */
export interface CorrectedMeasurement {
  measurement: SetMeasurement;
  /** The joints that it was measured from. */
  track: KeypointTrack;
  isMirrored: boolean;
  /** Whether anything differs from the machine's own result. */
  isByHand: boolean;
  /** One a repetition: why it does not count; null where it counts. */
  excluded: (string | null)[];
  /** One a repetition: whether its start, its end or a joint within it was set by hand. */
  handMade: boolean[];
}

/**
 * Measures a recording with its corrections: joints, side and mirroring before measuring, repetitions during
 * it.
 *
 * @param track  as it was seen, never changed
 * @param setup  as it was before any correction
 * @returns  without corrections exactly what measureSet() gives
 */
export function measureCorrected(
  track: KeypointTrack,
  setup: TimedSetup,
  corrections: readonly Pick<Correction, 'change'>[],
): CorrectedMeasurement {
  const settled = settleCorrections(corrections, setup.side);
  if (!settled.isByHand) return asSeen(track, measureSet(track, setup));
  const corrected = correctTrack(track, settled);
  let arranged: ArrangedRepetition[] = [];
  const { goMs } = setup;
  const { bends } = setup;
  const correctedSetup = {
    ...setup,
    side: settled.side,
    ...(settled.isMirrored && bends !== undefined ? { bends: mirrorBends(bends) } : {}),
  };
  const measured = measure(corrected, correctedSetup, (found, timesMs) => {
    const ofSet = goMs === undefined ? found : found.filter(({ events }) => isOfSet(events, goMs));
    arranged = arrangeRepetitions(ofSet, timesMs, settled.repetitions);
    return arranged;
  });
  const measurement = { ...measured, setup: correctedSetup };
  const moved = settled.points.map(({ timeMs }) => timeMs);
  return {
    measurement,
    track: corrected,
    isMirrored: settled.isMirrored,
    isByHand: settled.isByHand,
    excluded: arranged.map(({ excluded }) => excluded),
    handMade: arranged.map(
      ({ isByHand, loadedFrom, loadedTo }) =>
        isByHand ||
        moved.some(
          (timeMs) => timeMs >= measurement.timesMs[loadedFrom]! && timeMs <= measurement.timesMs[loadedTo]!,
        ),
    ),
  };
}

function asSeen(track: KeypointTrack, measurement: SetMeasurement): CorrectedMeasurement {
  return {
    measurement,
    track,
    isMirrored: false,
    isByHand: false,
    excluded: measurement.repetitions.map(() => null),
    handMade: measurement.repetitions.map(() => false),
  };
}
