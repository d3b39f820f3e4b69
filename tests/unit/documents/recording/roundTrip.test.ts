import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { taskIds } from '#core/exercises/exercises';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { poseModels } from '#core/keypoints/poseModel';
import { measure } from '#core/measurement/measure';
import { sides } from '#core/protocol/side';
import { buildRecording } from '#documents/recording/buildRecording';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { createReview } from '#features/review/store/createReview';
import { remeasureRecording } from '#tools/commands/tools/remeasureRecording';
import { anyLimits } from '../../../support/anyLimits';
import { fakeAdapters } from '../../../support/fakeAdapters';
import { filmPerson } from '../../../support/syntheticPerson';

/** Numbers as a network gives them, with now and then one that none would. */
const coordinate = fc.oneof(
  { weight: 20, arbitrary: fc.float({ min: -50, max: 1000, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom(-0, Math.fround(3.39e38), Math.fround(-3.39e38), 1.5 * 2 ** -149) },
);
const score = fc.float({ min: 0, max: 1, noNaN: true });

/** Any frames at all: nobody seen, points anywhere, uneven times. */
const anyTrack: fc.Arbitrary<KeypointTrack> = fc
  .array(
    fc.record({
      gapMs: fc.double({ min: 0.01, max: 400, noNaN: true }),
      points: fc.array(fc.tuple(coordinate, coordinate, score), {
        minLength: keypointCount,
        maxLength: keypointCount,
      }),
    }),
    { maxLength: 12 },
  )
  .map((frames) => {
    let timeMs = 0;
    const points = frames.flatMap((frame) => frame.points);
    return {
      widthPx: 540,
      heightPx: 960,
      timesMs: Float64Array.from(frames, ({ gapMs }) => (timeMs += gapMs)),
      xPx: Float32Array.from(points, ([x]) => x),
      yPx: Float32Array.from(points, ([, y]) => y),
      score: Float32Array.from(points, ([, , sure]) => sure),
    };
  });

/** A person who truly does the task, filmed with more or less noise, so that repetitions come out. */
const anyFilm = fc.record({
  peakDeg: fc.integer({ min: -20, max: 30 }),
  noisePx: fc.integer({ min: 0, max: 4 }),
});

const degrees = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyContents = fc.record({
  film: fc.oneof(fc.record({ track: anyTrack }), anyFilm),
  task: fc.constantFrom(...taskIds),
  side: fc.constantFrom(...sides),
  bodyHeightCm: fc.option(fc.integer({ min: 100, max: 220 }), { nil: undefined }),
  bends: fc.option(
    fc.record({
      yawDeg: degrees(-180, 180),
      sdDeg: degrees(0, 30),
      footDeg: fc.record({ left: fc.option(degrees(-90, 90)), right: fc.option(degrees(-90, 90)) }),
    }),
    { nil: undefined },
  ),
  id: fc.uuid(),
  createdAt: fc.date({
    min: new Date('2000-01-01T00:00:00Z'),
    max: new Date('2100-01-01T00:00:00Z'),
    noInvalidDate: true,
  }),
  note: fc.string({ unit: 'binary', maxLength: 200 }),
  limits: anyLimits,
  codec: fc.string({ maxLength: 100 }),
  size: fc.constantFrom(...poseModels),
});

type Contents = typeof anyContents extends fc.Arbitrary<infer Value> ? Value : never;

/** A document with these contents, as the text that is saved. */
function recordingText({ film, task, side, bodyHeightCm, bends, codec, size, ...parts }: Contents): string {
  const track = 'track' in film ? film.track : filmed(film.peakDeg, film.noisePx);
  const setup = { task, side, bodyHeightCm, bends };
  const document = buildRecording({
    ...parts,
    track,
    video: { bytes: 7, codec, widthPx: 540, heightPx: 960, durationMs: 5000.5, frameRateHz: 29.97 },
    model: { name: 'BlazePose', size, weights: 'made-up 1.2.3', backend: 'wasm' },
    measurement: measure(track, setup),
  });
  return JSON.stringify(document);
}

function filmed(peakDeg: number, noisePx: number): KeypointTrack {
  const scene = { task: 'split-stance-sit-to-stand', side: 'right', rateHz: 15, noisePx } as const;
  return filmPerson({ ...scene, repetitions: [{ peakDeg }] }).track;
}

describe('a recording as JSON', () => {
  it('comes in as it went out, whatever was filmed', () => {
    fc.assert(
      fc.property(anyContents, (contents) => {
        const text = recordingText(contents);
        expect(parseRecording(text)).toEqual(JSON.parse(text));
      }),
    );
  });

  it('goes out of the app as it came in', async () => {
    await fc.assert(
      fc.asyncProperty(anyContents, async (contents) => {
        const text = recordingText(contents);
        const { adapters, world } = fakeAdapters();
        const review = createReview(adapters);
        await review.openFile(new File([text], 'any.json', { type: 'application/json' }));
        expect(review.store.getState().problem).toBeNull();
        review.saveRecording();
        // Every saved file is a new document, and what follows from the joints is measured again.
        const before = JSON.parse(text) as RecordingDocument;
        const { id, createdAt } = before;
        const again = parseRecording(world.saved[0]!.text);
        expect(again).toEqual({
          ...before,
          id: again.id,
          createdAt: again.createdAt,
          derived: again.derived,
        });
        expect([id, createdAt]).not.toContain(again.id);
        // From the joints as the document holds them: rounding can move what just reaches a threshold.
        expect(again.derived).toEqual(remeasureRecording(before).derived);
      }),
      { numRuns: 40 },
    );
  });
});
