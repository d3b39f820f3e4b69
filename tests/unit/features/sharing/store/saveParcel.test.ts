import { describe, expect, it } from 'vitest';
import type { RepositoryParts } from '#device/storage/createRepository';
import { createMarks } from '#device/storage/marks';
import { openRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import { storageProblem } from '#device/storage/storageProblem';
import { recordingHead } from '#documents/recording/recordingHead';
import { reviewOnto } from '#documents/recording/reviewOnto';
import { createReviewSaver } from '#features/review/store/createReviewSaver';
import { saveParcel, standingOf, type Stake } from '#features/sharing/store/saveParcel';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { createTestShelves } from '../../../../support/testShelves';

const recording = smallRecording();
const second = { ...recording, id: 'ab0e8a58-2d6e-4a57-8f3e-3f1d7c8b2a11' };
const [line] = smallSession().sets;
const session = {
  ...smallSession(),
  sets: [line!, { ...line!, sessionId: second.id, number: 2 }],
};
const pictures = new Blob([new Uint8Array(3000).fill(7)], { type: 'video/webm' });
const sent = {
  session,
  sets: [
    { recording, video: null },
    { recording: second, video: pictures },
  ],
  sentAt: null,
  sender: null,
};
/** The same session, sent again with another remark, other results and another video of each set. */
const again = {
  ...sent,
  session: { ...session, remark: 'Said later.' },
  sets: sent.sets.map(({ recording }) => ({
    recording: { ...recording, note: 'Measured again.' },
    video: new Blob([new Uint8Array(5000).fill(9)], { type: 'video/webm' }),
  })),
};
const review = {
  limitsSet: [{ limits: { 'knee-angle': { least: -9, most: 4 } }, by: 'T1', at: recording.createdAt }],
  remarks: [{ atMs: 2500, text: 'Wobbly.', by: 'T1', at: recording.createdAt }],
  cues: [],
  reviewed: { by: 'T1', at: recording.createdAt },
};
const corrections = [
  {
    change: { kind: 'exclude' as const, atMs: 2500, reason: 'A stumble.' },
    by: 'T1',
    at: recording.createdAt,
  },
];

/** All that a repository keeps, videos by their size. */
async function everything({ sessions, recordings, videos, interrupted }: Repository) {
  const kept = [];
  for (const { id } of (await recordings.list()).found) {
    const { recording, facts } = (await recordings.find(id))!;
    const video = facts.video === null ? null : (await videos.read(facts.video))?.size;
    kept.push({ recording, fromVideo: facts.fromVideo, video });
  }
  return { sessions: await sessions.list(), kept, interrupted: await interrupted() };
}

/** A clinic's device on which the session was reviewed. */
async function reviewedDevice() {
  const device = createTestDevice();
  const repository = await device.open();
  await saveParcel(sent, repository);
  const { edition } = (await repository.recordings.findHead(recording.id))!;
  const { limits } = review.limitsSet[0]!;
  const reviewed = reviewOnto(recording, { ...recordingHead(recording), limits, corrections, review });
  await repository.recordings.update(recordingHead(reviewed), edition);
  repository.close();
  return device;
}

describe('a session that comes again', () => {
  it('keeps what was reviewed and corrected, judged on what is new', async () => {
    const repository = await (await reviewedDevice()).open();
    await saveParcel(again, repository);
    const found = (await repository.recordings.find(recording.id))!;
    expect(found.recording).toMatchObject({ note: 'Measured again.', corrections, review });
    expect(found.recording.limits).toEqual(review.limitsSet[0]!.limits);
    expect(found.recording.derived.repetitions[0]).toMatchObject({ excluded: 'A stumble.' });
    expect((await repository.recordings.find(second.id))!.recording).toEqual(again.sets[1]!.recording);
    expect((await repository.sessions.find(session.id))!.remark).toBe('Said later.');
    expect((await repository.videos.list()).map(({ bytes }) => bytes)).toEqual([5000, 5000]);
    expect(await standingOf(again, repository)).toEqual({ kind: 'known' });
  });

  it('keeps a video and a set that it comes without', async () => {
    const repository = await (await reviewedDevice()).open();
    await saveParcel({ ...again, sets: [{ recording: second, video: null }] }, repository);
    const { kept } = await everything(repository);
    expect(kept.map(({ video }) => video).sort()).toEqual([3000, null]);
    expect((await repository.recordings.find(recording.id))!.recording.review).toEqual(review);
  });

  it('keeps what the therapist signed as settled, which is no other answer', async () => {
    const repository = await (await reviewedDevice()).open();
    const at = '2026-04-07T06:07:08.000Z';
    const settles = [{ visitId: session.id, by: 'therapist' as const, who: 'AB', at }];
    await repository.sessions.save({ ...session, settles });
    expect(await standingOf(sent, repository)).toEqual({ kind: 'known' });
    await saveParcel(again, repository);
    expect(await repository.sessions.find(session.id)).toMatchObject({ remark: 'Said later.', settles });
  });

  it('says what is at stake', async () => {
    const repository = await (await reviewedDevice()).open();
    const stake: Stake = {
      workedOn: 1,
      videosAdded: 1,
      videosReplaced: 1,
      setsChanged: 2,
      setsAdded: 0,
      hasOtherAnswers: true,
    };
    expect(await standingOf(again, repository)).toEqual({ kind: 'another-version', stake });
    expect(await standingOf(sent, repository)).toEqual({ kind: 'known' });
    const withVideo = { ...sent, sets: [{ recording, video: pictures }] };
    expect(await standingOf(withVideo, repository)).toEqual({
      kind: 'another-version',
      stake: { ...stake, videosReplaced: 0, setsChanged: 0, hasOtherAnswers: false },
    });
  });

  it('overwrites no review that is saved in another tab while it is kept', async () => {
    const device = await reviewedDevice();
    const other = await device.open();
    const repository = await device.open({
      videos: {
        ...device.videos,
        async create(name) {
          const { recording: head, edition } = (await other.recordings.findHead(second.id))!;
          if (head.review === undefined) await other.recordings.update({ ...head, review }, edition);
          return device.videos.create(name);
        },
      },
    });
    await expect(saveParcel(again, repository)).rejects.toMatchObject({ reason: 'changed' });
    expect((await repository.recordings.find(second.id))!.recording.review).toEqual(review);
    expect((await repository.sessions.find(session.id))!.remark).toBe(session.remark);
    await saveParcel(again, repository);
    expect((await repository.recordings.find(second.id))!.recording.review).toEqual(review);
  });

  it('is saved with the newer joints while the older ones are being reviewed', async () => {
    const device = await reviewedDevice();
    const [here, there] = [await device.open(), await device.open()];
    const save = createReviewSaver(here, (await here.recordings.find(second.id))!);
    await save({ ...recordingHead(second), review });
    await saveParcel(again, there);
    const later = { ...review, remarks: [{ ...review.remarks[0]!, text: 'Steadier.' }] };
    await save({ ...recordingHead(second), review: later });
    const { recording: kept } = (await here.recordings.find(second.id))!;
    expect(kept).toMatchObject({ note: 'Measured again.', review: later });
    await save({ ...recordingHead(second), review });
    expect((await here.recordings.find(second.id))!.recording).toMatchObject({
      note: 'Measured again.',
      review,
    });
  });
});

describe('a database that answers too late', () => {
  it('finds the videos that what it did in the end names', async () => {
    const device = await reviewedDevice();
    const inner = await device.openRecords();
    const repository = await device.open({
      records: {
        ...inner,
        async apply(changes) {
          await inner.apply(changes);
          throw storageProblem('silent');
        },
      },
    });
    await expect(saveParcel(again, repository)).rejects.toMatchObject({ reason: 'silent' });
    const { kept } = await everything(await device.open());
    expect(kept.map(({ video }) => video)).toEqual([5000, 5000]);
  });
});

/** Storage in which the n-th writing fails, and where the device is off afterwards every later one too. */
function faulty(device: ReturnType<typeof createTestDevice>, at: number, isOff: boolean) {
  let writes = 0;
  const step = () => {
    writes++;
    if (writes === at || (isOff && writes > at)) throw storageProblem('full');
  };
  const marks = createMarks(undefined);
  const parts = async (): Promise<Partial<RepositoryParts>> => {
    const inner = await device.openRecords();
    return {
      marks,
      records: {
        ...inner,
        async apply(changes) {
          step();
          return inner.apply(changes);
        },
      },
      videos: {
        ...device.videos,
        async create(name) {
          step();
          const writer = await device.videos.create(name);
          return {
            async write(chunk) {
              step();
              await writer.write(chunk);
            },
            async close() {
              step();
              await writer.close();
            },
          };
        },
        async remove(name) {
          step();
          await device.videos.remove(name);
        },
      },
    };
  };
  return { parts, marks, hasFailed: () => writes >= at };
}

describe('a session that comes again to a device that fails at any step', { timeout: 60_000 }, () => {
  it.each([
    ['is full', false],
    ['is switched off', true],
  ])('is whole in one version or the other where it %s, and nothing else is there', async (_, isOff) => {
    const before = await everything(await (await reviewedDevice()).open());
    let failed = 0;
    for (let at = 1; ; at++) {
      const device = await reviewedDevice();
      const fault = faulty(device, at, isOff);
      const repository = await device.open(await fault.parts());
      const error = await saveParcel(again, repository).then(
        () => null,
        (error: unknown) => error,
      );
      if (!fault.hasFailed()) break;
      failed++;
      const { repository: later } = await openRepository({
        ...createTestShelves(),
        openRecords: device.openRecords,
        openVideos: () => Promise.resolve(device.videos),
      });
      const after = await everything(later);
      expect(after.interrupted.found).toEqual([]);
      if (error === null) expect(after.sessions.found[0]!.remark).toBe('Said later.');
      else expect(after).toEqual(before);
      expect(await device.videos.list()).toHaveLength(error === null ? 2 : 1);
      expect((await fault.marks.held()).size).toBe(0);
      if (isOff) continue;
      // In the same tab, once there is room again.
      await saveParcel(again, repository);
      expect((await repository.sessions.find(session.id))!.remark).toBe('Said later.');
    }
    expect(failed).toBeGreaterThan(6);
  });
});
