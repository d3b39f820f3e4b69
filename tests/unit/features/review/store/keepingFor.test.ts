import { describe, expect, it } from 'vitest';
import { emptyReview } from '#documents/recording/reviewSchema';
import { browserPatients } from '#features/review/store/browserPatients';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallRecording } from '../../../../support/smallRecording';
import { settle, startReview, trackedReview, video } from '../../../../support/startReview';
import { testLog } from '../../../../support/testLog';

describe('review.keepFor(pseudonym, day)', () => {
  it('keeps what was measured for a patient, and then every change of it', async () => {
    const { review, state, world } = await trackedReview();
    expect(state().keeping.state).toBe('measured');
    await review.keepFor('Blue Heron 7', '2026-04-05');
    expect(state()).toMatchObject({ keptFor: 'Blue Heron 7', keeping: { state: 'kept' } });
    expect(world.keptFor).toHaveLength(1);
    expect(world.keptFor[0]).toMatchObject({
      pseudonym: 'Blue Heron 7',
      recording: { setup: { side: 'right' } },
    });
    review.setRemark(null, 'Better after the cue.');
    await settle();
    expect(state().keeping).toEqual({ state: 'kept' });
  });

  it('keeps the remarks and limits set before, and says what failed without losing anything', async () => {
    const { review, state, world, adapters } = await trackedReview();
    review.setRemark(null, 'First look.');
    const keep = adapters.patients.keep;
    adapters.patients.keep = () => Promise.reject(new Error('The disk is full'));
    await review.keepFor('Blue Heron 7', '2026-04-05');
    expect(state()).toMatchObject({
      keptFor: null,
      keeping: { state: 'measured' },
      problem: { sentence: expect.stringMatching(/The disk is full/) },
    });
    adapters.patients.keep = keep;
    await review.keepFor('Blue Heron 7', '2026-04-05');
    expect(world.keptFor[0]!.recording.review?.remarks).toMatchObject([{ text: 'First look.' }]);
  });

  it('asks before another recording takes the place of one that is kept nowhere', async () => {
    const { review, state, navigation } = await trackedReview();
    const opening = review.openExample();
    await settle();
    expect(navigation.store.getState().question?.title).toBe('Give up the measured recording?');
    navigation.answer(false);
    await opening;
    expect(state().recording?.origin).toBe('video');
    const again = review.openExample();
    await settle();
    navigation.answer(true);
    await again;
    expect(state().recording?.origin).toBe('example');
    await review.openExample();
    expect(navigation.store.getState().question).toBeNull();
  });
});

describe('review.openFiles(files)', () => {
  it('takes the first, and the others one after the other', async () => {
    const { review, state } = startReview();
    const names = ['left.mp4', 'right.mp4', 'again.mp4'];
    await review.openFiles(names.map((name) => new File(['x'], name, { type: 'video/mp4' })));
    expect(state().chosen).not.toBeNull();
    expect(state().waiting.map(({ name }) => name)).toEqual(['right.mp4', 'again.mp4']);
    await review.openNext();
    expect(state().waiting.map(({ name }) => name)).toEqual(['again.mp4']);
    review.forgetWaiting();
    expect(state().waiting).toEqual([]);
    await review.openFiles([video]);
    expect(state().waiting).toEqual([]);
  });
});

describe('browserPatients(world)', () => {
  it('puts both legs of a day into one session of the patient, with their videos', async () => {
    const repository = await createTestDevice().open();
    let ids = 0;
    const patients = browserPatients({
      openRepository: () => Promise.resolve({ repository, problem: null }),
      log: testLog(repository),
      newId: () => `${++ids}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d99`,
      now: () => new Date('2026-04-05T08:00:00.000Z'),
    });
    const recording = smallRecording();
    const other = { ...recording, id: '9b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11' };
    const later = {
      ...recording,
      id: '8b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11',
      createdAt: '2026-04-07T12:00:00.000Z',
    };
    await patients.keep(recording, new File(['x'], 'a.mp4', { type: 'video/mp4' }), 'Blue Heron 7');
    const { save } = await patients.keep(other, null, 'Blue Heron 7');
    await patients.keep(later, null, 'Blue Heron 7');
    expect(await patients.pseudonyms()).toEqual(['Blue Heron 7']);
    const { found } = await repository.sessions.list();
    expect(found.map(({ patient, sets }) => [patient, sets.map(({ number }) => number)])).toEqual([
      ['Blue Heron 7', [1]],
      ['Blue Heron 7', [1, 2]],
    ]);
    expect(await repository.videos.list()).toHaveLength(1);
    const kept = (await repository.recordings.findHead(other.id))!;
    await save({ ...kept.recording, note: 'changed in the review' });
    expect((await repository.recordings.findHead(other.id))!.recording.note).toBe('changed in the review');
    const logOf = async () => (await repository.patients.list()).found[0]!.log;
    expect(await logOf()).toEqual([]);
    const reviewed = { by: 'AB', at: '2026-04-07T12:00:00.000Z' };
    await save({ ...kept.recording, review: { ...emptyReview, reviewed } });
    expect(await logOf()).toMatchObject([{ what: 'review', about: other.id, by: 'AB' }]);
  });
});
