import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { measure } from '#core/measurement/measure';
import type { Setup } from '#core/measurement/measurement';
import { defaultLimits, withLimit } from '#core/protocol/limits';
import { buildRecording, type RecordingParts } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { filmPerson } from './syntheticPerson';

export const smallSetup: Setup = { task: 'split-stance-sit-to-stand', side: 'right' };

/** Two repetitions by an invented person, with a hidden joint and a moment without anybody. */
export function smallRecordingParts(): RecordingParts {
  const { track } = filmPerson({
    ...smallSetup,
    repetitions: [{ peakDeg: 13 }, { peakDeg: -4 }],
    rateHz: 20,
    noisePx: 0.8,
    seed: 2,
    unseen: [{ joint: 'right_knee', fromMs: 4100, untilMs: 4600 }],
  });
  withoutPerson(track, 3);
  return {
    id: '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11',
    createdAt: new Date('2024-03-05T07:08:09.010Z'),
    note: 'An invented person.',
    limits: withLimit(defaultLimits, 'knee-angle', 'most', 8.5),
    video: {
      bytes: 123_456,
      codec: 'avc1.42001f',
      widthPx: track.widthPx,
      heightPx: track.heightPx,
      durationMs: 8500,
      frameRateHz: 20,
    },
    model: { name: 'BlazePose', size: 'full', weights: 'weights 1.2.3', backend: 'wasm' },
    track,
    measurement: measure(track, smallSetup),
  };
}

export function smallRecording(): RecordingDocument {
  return buildRecording(smallRecordingParts());
}

function withoutPerson({ xPx, yPx, score }: KeypointTrack, frame: number): void {
  for (const values of [xPx, yPx, score]) values.fill(0, frame * 33, frame * 33 + 33);
}
