import { describe, expect, it } from 'vitest';
import { createClinic } from '#features/sharing/store/createClinic';
import { sortFiles } from '#features/sharing/store/sessionFile';
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

describe('sortFiles(files)', () => {
  it('tells what is sealed and what is a document from recordings and videos', async () => {
    const sealed = fileOf('', 'sent.age');
    const document = fileOf(session);
    const other = fileOf(plan, 'plan.json');
    const damaged = fileOf('{', 'damaged.JSON');
    const recording = fileOf(smallRecording(), 'recording.json');
    const long = fileOf(' '.repeat(5_000_001), 'long.json');
    const video = fileOf('ftypisom', 'knee.mp4');
    expect(await sortFiles([video, sealed, recording, document, other, long, damaged])).toEqual({
      sessions: [sealed, document, other, damaged],
      recordings: [recording, long],
      videos: [video],
    });
  });
});

describe('a session document with recordings that come along', () => {
  const mine = smallRecording();
  const ofMine = { ...session, sets: [{ ...session.sets[0]!, sessionId: mine.id }] };
  const otherId = '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d10';

  it('is kept with those that its sets name, in one go; of the others it is said what to do', async () => {
    const { repository, clinic, incoming } = await openClinic();
    const stray = { ...mine, id: otherId };
    await clinic.openFiles(
      [fileOf(ofMine)],
      [fileOf(stray, 'stray.json'), fileOf(mine, 'mine.json'), fileOf('{', 'damaged.json')],
    );
    expect(incoming()).toMatchObject([
      { fileName: 'session.json', state: 'kept', recordings: 1 },
      { fileName: 'damaged.json', state: 'refused', recordings: 0 },
      { fileName: 'stray.json', state: 'refused', recordings: 0 },
    ]);
    expect(incoming()[2]!.sentence).toMatch(/belongs to no session that came with it\. Put it in together/);
    const kept = await repository.recordings.find(mine.id);
    expect(kept!.facts.visitId).toBe(id);
    expect(kept!.recording.observed).toEqual(mine.observed);
    expect(await repository.recordings.find(otherId)).toBeNull();
  });

  it('gets those that come later with the document again', async () => {
    const { repository, clinic, incoming } = await openClinic();
    await clinic.openFiles([fileOf(ofMine)]);
    await clinic.openFiles([fileOf(ofMine)], [fileOf(mine)]);
    expect(incoming()[1]).toMatchObject({ state: 'asks', recordings: 1, stake: { setsAdded: 1 } });
    await clinic.decide(1, true);
    expect((await repository.recordings.find(mine.id))!.facts.visitId).toBe(id);
  });

  it('takes each of two sessions its own recording, and a copy of one for nothing new', async () => {
    const { repository, clinic, incoming } = await openClinic();
    const theirs = { ...mine, id: otherId };
    const ofTheirs = { ...ofMine, id: otherId, sets: [{ ...session.sets[0]!, sessionId: otherId }] };
    await clinic.openFiles([fileOf(ofTheirs), fileOf(ofMine)], [fileOf(mine), fileOf(theirs), fileOf(mine)]);
    expect(incoming().map(({ state }) => state)).toEqual(['kept', 'kept']);
    expect((await repository.recordings.find(otherId))!.facts.visitId).toBe(otherId);
    expect((await repository.recordings.find(mine.id))!.facts.visitId).toBe(id);
  });

  it('says of two versions of one recording which was taken', async () => {
    const { clinic, incoming } = await openClinic();
    const other = { ...mine, note: 'Another version.' };
    await clinic.openFiles([fileOf(ofMine)], [fileOf(mine, 'one.json'), fileOf(other, 'two.json')]);
    expect(incoming()).toMatchObject([
      { state: 'kept' },
      { fileName: 'two.json', state: 'refused', sentence: expect.stringContaining('one.json') as string },
    ]);
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
