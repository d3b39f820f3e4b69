import { csvParse } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CorrectionChange } from '#core/correction/correction';
import { measureCorrected } from '#core/correction/measureCorrected';
import { findTask, taskIds } from '#core/exercises/exercises';
import { keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { defaultLimits } from '#core/protocol/limits';
import { otherSide, sides, type Side } from '#core/protocol/side';
import { buildRecording } from '#documents/recording/buildRecording';
import { isWorkedOn, withKeptWork } from '#documents/recording/keptWork';
import { parseRecording } from '#documents/recording/parseRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead } from '#documents/recording/recordingHead';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { reviewOnto } from '#documents/recording/reviewOnto';
import { createReview } from '#features/review/store/createReview';
import { asReceived } from '#features/sharing/store/asReceived';
import { remeasureRecording } from '#tools/commands/tools/remeasureRecording';
import { fakeAdapters } from '../../../support/fakeAdapters';
import { version5, version6, version8 } from '../../../support/olderRecording';
import { sideTold } from '../../../support/sideTold';
import { smallRecordingParts } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';
import { filmPerson, mirrorTrack } from '../../../support/syntheticPerson';

/** How the recording came to be of the right leg: as filmed, or set right by hand. */
const ways = ['as filmed', 'mirrored', 'wrong leg', 'mirrored and wrong leg'] as const;

/** One knee goes far inward. Task, side and the way to it. */
const filmed = fc.record({
  task: fc.constantFrom(...taskIds.filter((id) => findTask(id).workingFoot !== 'either')),
  side: fc.constantFrom<Side>(...sides),
  way: fc.constantFrom(...ways),
  seed: fc.integer({ min: 1, max: 1000 }),
});
type Filmed = typeof filmed extends fc.Arbitrary<infer T> ? T : never;

function shoot({ task, side, seed }: Filmed): KeypointTrack {
  return filmPerson({ task, side, seed, noisePx: 1, rateHz: 20, repetitions: [{ peakDeg: 22 }] }).track;
}

/** A document of it, corrected where it has to be. */
function documentOf(wish: Filmed): RecordingDocument {
  const { task, side, way } = wish;
  const isMirrored = way.startsWith('mirrored');
  const setup = { task, side: way.endsWith('wrong leg') ? otherSide(side) : side };
  const changes: CorrectionChange[] = [
    ...(isMirrored ? [{ kind: 'mirrored' as const, isMirrored }] : []),
    ...(setup.side === side ? [] : [{ kind: 'working-side' as const, side }]),
  ];
  const corrections = changes.map((change) => ({ change, by: 'T1', at: '2026-03-04T05:06:07.000Z' }));
  const track = isMirrored ? mirrorTrack(shoot(wish)) : shoot(wish);
  const { measurement } = measureCorrected(track, setup, corrections);
  const { widthPx, heightPx } = track;
  const parts = smallRecordingParts();
  const video = { ...parts.video, widthPx, heightPx };
  return buildRecording({ ...parts, limits: defaultLimits, video, track, setup, measurement, corrections });
}

/** What is told of a document once it is opened. */
function told(recording: RecordingDocument) {
  const { setup, corrections = [] } = recording;
  return sideTold(measureCorrected(recordingTrack(recording), setup, corrections).measurement);
}

const asTold = (side: Side) => ({ side, outOfLine: ['inward'], isDoubted: false });
const throughText = (recording: object) => parseRecording(JSON.stringify(recording));
const inwardEnd = ({ derived }: RecordingDocument) =>
  derived.repetitions.map(({ ranges }) => ranges['knee-angle'].max!.value > 15);

/** Documents and tables keep 0.01 px. */
const roundingPx = 0.02;
/** Few runs: each films and measures some seconds of movement a few times. */
const runs = { numRuns: 20 };
const holds = (property: (wish: Filmed) => void) => fc.assert(fc.property(filmed, property), runs);

const tableOf = async (recording: RecordingDocument) => {
  const { adapters, world } = fakeAdapters();
  const review = createReview(adapters);
  await review.openFile(new File([JSON.stringify(recording)], 'any.json', { type: 'application/json' }));
  review.saveTable('repetitions');
  return csvParse(world.saved[0]!.text.slice(1));
};

describe('left and right of a recording document', { timeout: 60_000 }, () => {
  it('stay as they are when it is saved, opened and measured again', () => {
    holds((wish) => {
      const opened = throughText(documentOf(wish));
      for (const one of [opened, throughText(remeasureRecording(opened))]) {
        expect(told(one)).toEqual(asTold(wish.side));
        expect(inwardEnd(one)).toEqual([true]);
      }
    });
  });

  it('stay as they are in a document of an older version', () => {
    holds((wish) => {
      const present = documentOf(wish);
      const older = [version8(present), version6(present), { ...version5(present), version: 4 }];
      for (const one of older.map(throughText)) {
        expect(told(one)).toEqual(asTold(wish.side));
        expect(inwardEnd(one)).toEqual([true]);
      }
    });
  });

  it('stay as they are in a session that is sent and received', () => {
    holds((wish) => {
      const recording = documentOf(wish);
      const session = {
        ...smallSession(),
        sets: [{ ...smallSession().sets[0]!, sessionId: recording.id, task: wish.task }],
      };
      const parcel = { session, sets: [{ recording, video: null }], sentAt: null, sender: null };
      const received = throughText(asReceived(parcel, null).sets[0]!.recording);
      expect(told(received)).toEqual(asTold(wish.side));
      expect(inwardEnd(received)).toEqual([true]);
    });
  });

  it('stay as they are where joints come again that were looked at more closely', () => {
    holds((wish) => {
      const recording = documentOf(wish);
      const newer = remeasureRecording({ ...recording, corrections: [] });
      const head = readRecordingHead(JSON.parse(JSON.stringify(recordingHead(recording))));
      for (const one of [reviewOnto(newer, head), withKeptWork(newer, head)]) {
        if (!isWorkedOn(head)) expect(wish.way).toBe('as filmed');
        expect(told(throughText(one))).toEqual(asTold(wish.side));
        expect(inwardEnd(one)).toEqual([true]);
      }
    });
  });

  it('stay as they are in the review, its table of repetitions, its table of frames and its document', async () => {
    await fc.assert(
      fc.asyncProperty(filmed, async (wish) => {
        const { adapters, world } = fakeAdapters();
        const review = createReview(adapters);
        await review.openFile(
          new File([JSON.stringify(documentOf(wish))], 'any.json', { type: 'application/json' }),
        );
        const { measurement } = review.store.getState().recording!;
        expect(sideTold(measurement)).toEqual(asTold(wish.side));
        review.saveTable('repetitions');
        review.saveTable('frames');
        review.saveRecording();
        const [repetitions, frames] = world.saved.map(({ text }) => csvParse(text.slice(1)));
        expect(repetitions![0]).toMatchObject({
          side: wish.side,
          direction: 'inward',
          other_leg_likely: '',
        });
        // Facing the camera, the person's own left is on the right in the picture.
        const [first] = frames!;
        expect(Number(first!['left_hip_x_px'])).toBeGreaterThan(Number(first!['right_hip_x_px']));
        const knee = shoot(wish).xPx[keypointNames.indexOf(`${wish.side}_knee`)]!;
        expect(Math.abs(Number(first![`${wish.side}_knee_x_px`]) - knee)).toBeLessThan(roundingPx);
        expect(told(throughText(JSON.parse(world.saved[2]!.text) as object))).toEqual(asTold(wish.side));
      }),
      runs,
    );
  });

  it('are in doubt in the table of a recording that nobody has set right', async () => {
    await fc.assert(
      fc.asyncProperty(filmed, async (wish) => {
        const recording = documentOf({ ...wish, way: 'as filmed' });
        const setup = { ...recording.setup, side: otherSide(wish.side) };
        const doubted = remeasureRecording({ ...recording, setup });
        for (const row of await tableOf(doubted))
          expect(row).toMatchObject({ side: otherSide(wish.side), other_leg_likely: 'yes' });
        expect(throughText(doubted).derived.isSideDoubtful).toBe(true);
      }),
      runs,
    );
  });
});
