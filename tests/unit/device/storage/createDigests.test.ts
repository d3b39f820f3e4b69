import { describe, expect, it } from 'vitest';
import { createTestDevice } from '../../../support/openTestRepository';
import { smallRecording } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';

const session = smallSession();
const recording = smallRecording();
const patientId = '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66';
const digest = { patientId, overview: { few: 1 }, course: { many: [1, 2] } };

async function opened() {
  const repository = await createTestDevice().open();
  await repository.sessions.save(session);
  await repository.recordings.save(recording, { visitId: session.id, video: null, fromVideo: 'done' });
  return repository;
}

describe('repository.digests', () => {
  it('lists what changed since digests were saved, each once', async () => {
    const { sessions, digests } = await opened();
    await sessions.save({ ...session, remark: 'again' });
    const changed = await digests.changed();
    expect(changed.map(({ kind, id }) => [kind, id])).toEqual([
      ['recording', recording.id],
      ['session', session.id],
    ]);
    await digests.save([digest], changed);
    expect(await digests.changed()).toEqual([]);
    expect(await digests.overviews()).toEqual([{ patientId, value: digest.overview }]);
    expect(await digests.course(patientId)).toEqual(digest.course);
  });

  it('keeps the mark of what changed again while a digest was being made', async () => {
    const { sessions, digests } = await opened();
    const changed = await digests.changed();
    await sessions.save({ ...session, remark: 'changed meanwhile' });
    await digests.save([digest], changed);
    expect((await digests.changed()).map(({ kind, id }) => [kind, id])).toEqual([['session', session.id]]);
  });

  it('says that something is gone, but not what', async () => {
    const { sessions, digests } = await opened();
    await sessions.remove(session.id);
    expect((await digests.changed()).map(({ kind, id }) => [kind, id])).toEqual([['gone', '']]);
  });

  it('goes with the patient', async () => {
    const { patients, digests } = await opened();
    await digests.save([digest], []);
    await patients.remove(patientId);
    expect(await digests.overviews()).toEqual([]);
    expect(await digests.course(patientId)).toBeUndefined();
  });
});
