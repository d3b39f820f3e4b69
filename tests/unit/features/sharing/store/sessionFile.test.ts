import { describe, expect, it } from 'vitest';
import { createClinic } from '#features/sharing/store/createClinic';
import { belongsInList } from '#features/sharing/store/sessionFile';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallPlan } from '../../../../support/smallPlan';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';

const session = smallSession();
const { id, patient, planId } = session;
const plan = smallPlan({ id: planId!, patient });

function fileOf(content: unknown, name = 'session.json'): File {
  return new File([typeof content === 'string' ? content : JSON.stringify(content, null, 2)], name);
}

/** A device without a key, on which the plan was written. */
async function openClinic() {
  const repository = await createTestDevice().open();
  await repository.plans.save(plan.id, JSON.stringify(plan));
  const clinic = createClinic({
    openRepository: () => Promise.resolve({ repository, problem: null }),
    firstKeys: [],
    readKeys: () => Promise.resolve([]),
    writeKeys: () => Promise.resolve(),
    saveBlob: () => undefined,
    now: () => new Date('2026-05-06T07:08:09Z'),
  });
  return { repository, clinic, incoming: () => clinic.store.getState().incoming };
}

describe('belongsInList(file)', () => {
  it('takes what is sealed and what is a document, and leaves videos and recordings to the review', async () => {
    expect(await belongsInList(fileOf('', 'sent.age'))).toBe(true);
    expect(await belongsInList(fileOf(session))).toBe(true);
    expect(await belongsInList(fileOf(plan, 'plan.json'))).toBe(true);
    expect(await belongsInList(fileOf('{', 'damaged.JSON'))).toBe(true);
    expect(await belongsInList(fileOf(smallRecording(), 'recording.json'))).toBe(false);
    expect(await belongsInList(fileOf('ftypisom', 'knee.mp4'))).toBe(false);
    expect(await belongsInList(fileOf(' '.repeat(5_000_001), 'long.json'))).toBe(false);
  });
});

describe('a session document that comes by itself', () => {
  it('is kept like a parcel without recordings, also where there is no key', async () => {
    const { repository, clinic, incoming } = await openClinic();
    await clinic.openFiles([fileOf(session)]);
    expect(incoming()).toMatchObject([{ state: 'kept', session: { patient, startedAt: session.startedAt } }]);
    expect(incoming()[0]!.sender).toBe('It is not signed, so nothing shows which device it comes from.');
    expect(await repository.sessions.find(id)).toEqual(session);

    await clinic.openFiles([fileOf(session)]);
    expect(incoming()[1]!.state).toBe('known');
    await clinic.openFiles([fileOf({ ...session, remark: 'Said later.' })]);
    expect(incoming()[2]!.state).toBe('asks');
  });

  it('counts nothing as settled by the therapist, since nobody signed it', async () => {
    const { repository, clinic } = await openClinic();
    const settles = [{ visitId: id, by: 'therapist' as const, who: 'XY', at: session.startedAt }];
    await clinic.openFiles([fileOf({ ...session, settles })]);
    expect((await repository.sessions.find(id))!.settles).toEqual([]);
  });

  it('is asked about where it follows no plan of this device', async () => {
    const { repository, clinic, incoming } = await openClinic();
    await clinic.openFiles([fileOf({ ...session, planId: null })]);
    expect(incoming()).toMatchObject([
      { state: 'doubtful', sentence: 'It follows no plan that was written on this device.' },
    ]);
    await clinic.decide(0, true);
    expect(incoming()[0]!.state).toBe('kept');
    expect(await repository.sessions.find(id)).not.toBeNull();
  });

  it('is refused where a recording of another session is said to be its own', async () => {
    const { repository, clinic, incoming } = await openClinic();
    const recording = smallRecording();
    const theirs = { ...session, patient: 'invented-otter', sets: [] };
    await repository.keepTogether(theirs, [{ recording, visitId: id, fromVideo: 'impossible', video: null }]);
    const otherId = '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d10';
    const sets = [{ ...session.sets[0]!, sessionId: recording.id }];
    await clinic.openFiles([fileOf({ ...session, id: otherId, sets })]);
    expect(incoming()).toMatchObject([
      { state: 'refused', sentence: expect.stringContaining('a session of invented-otter') as string },
    ]);
    expect(await repository.sessions.find(otherId)).toBeNull();
  });

  it('waits its turn in a queue, in which each refusal says what is wrong and what to do', async () => {
    const { repository, clinic, incoming } = await openClinic();
    await clinic.openFiles([
      fileOf(plan, 'plan.json'),
      fileOf('not JSON', 'text.json'),
      fileOf({ ...session, version: 99 }, 'newer.json'),
      fileOf({ ...session, effort: 11 }, 'damaged.json'),
      fileOf({ ...session, startedAt: '2027-04-05T06:07:08.000Z', endedAt: null }, 'ahead.json'),
      fileOf(smallRecording(), 'recording.json'),
      fileOf(session, 'good.json'),
    ]);
    expect(incoming().map(({ state }) => state)).toEqual([...Array<string>(6).fill('refused'), 'kept']);
    const sentences = incoming().map(({ sentence }) => sentence);
    expect(sentences[0]).toMatch(/is a plan, not a session\. The patient opens it at home\./);
    expect(sentences[1]).toMatch(/no session document either\. Open videos and recordings from the start\./);
    expect(sentences[2]).toMatch(/version 99.*Update the program\./);
    expect(sentences[3]).toMatch(/effort.*Save it again where it came from\./);
    expect(sentences[4]).toMatch(/date lies in the future.*Set the clocks/);
    expect(sentences[5]).toMatch(/is a recording, not a session\. Open it from the start/);
    expect((await repository.sessions.list()).found).toHaveLength(1);
  });
});
