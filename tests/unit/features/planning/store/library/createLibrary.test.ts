import { describe, expect, it } from 'vitest';
import { Problem } from '#core/problem';
import { isOfLibrary } from '#device/storage/keptLibrary';
import { withEntry } from '#documents/library/libraryChanges';
import { libraryCandidates, withFirstLimits } from '#features/planning/rules/libraryCandidates';
import { createLibrary, type LibraryWorld } from '#features/planning/store/library/createLibrary';
import { createTestDevice } from '../../../../../support/openTestRepository';
import { smallItem } from '../../../../../support/smallPlan';
import { testSigner } from '../../../../../support/testLog';

const signer = await testSigner();
const slides = { name: 'Heel slides', how: 'Slowly.', dose: '2 sets of 10' };

type TestDevice = ReturnType<typeof createTestDevice>;

async function open(by: string, device: TestDevice = createTestDevice(), parts: Partial<LibraryWorld> = {}) {
  const saved: { fileName: string; text: string }[] = [];
  let hour = 10;
  const repository = await device.open();
  const library = await createLibrary({
    ...repository.library,
    watch: (listener) => void repository.subscribe((change) => isOfLibrary(change) && listener()),
    initials: () => Promise.resolve(by),
    signer: () => Promise.resolve(signer),
    saveFile: (fileName, text) => void saved.push({ fileName, text }),
    newId: () => crypto.randomUUID(),
    now: () => new Date(`2026-04-12T${hour++}:00:00.000Z`),
    ...parts,
  });
  return { library, device, repository, saved, state: () => library.store.getState() };
}

async function fileOf({ library, saved }: Awaited<ReturnType<typeof open>>): Promise<string> {
  await library.save();
  return saved.at(-1)!.text;
}

const stage = (words: string) => ({ id: 'step-8', words, start: 6, upTo: { min: 12, max: 12 } });

describe('createLibrary(world)', () => {
  it('keeps entries by name, takes them out, and undoes the last change', async () => {
    const { library, device, state } = await open('AB');
    await library.keep('exercises', slides);
    const [first] = state().library.exercises;
    expect(first).toMatchObject({ ...slides, by: 'AB', at: '2026-04-12T10:00:00.000Z' });
    await library.keep('exercises', { ...slides, dose: '3 sets of 10' });
    expect(state().library.exercises).toMatchObject([{ id: first!.id, dose: '3 sets of 10' }]);
    await library.remove('exercises', first!.id);
    expect(state()).toMatchObject({
      library: { exercises: [], removed: [{ kind: 'exercises', key: first!.id }] },
      canUndo: true,
    });
    await library.undo();
    expect(state()).toMatchObject({ library: { exercises: [{ dose: '3 sets of 10' }] }, canUndo: false });
    expect(state().library.removed).toEqual([]);
    expect((await open('KN', device)).state().library).toEqual(state().library);
  });

  it('brings a colleague’s entries after a look, and can be undone', async () => {
    const from = await open('AB');
    await from.library.keep('exercises', slides);
    await from.library.keep('texts', { name: 'First weeks', text: 'Little and often.' });
    const file = await fileOf(from);
    expect(from.saved[0]!.fileName).toBe('overfoot-library-2026-04-12.jsonl');
    const to = await open('KN');
    await to.library.keep('texts', { name: 'Own', text: 'Ours.' });
    const before = to.state().library;
    await to.library.open(new Blob([file]));
    expect(to.state()).toMatchObject({
      found: { signer: signer.key, entries: [{ standing: 'new' }, { standing: 'new' }] },
    });
    expect(to.state().library).toEqual(before);
    await to.library.take();
    expect(to.state().library.texts.map(({ name, by }) => [name, by])).toEqual([
      ['Own', 'KN'],
      ['First weeks', 'AB'],
    ]);
    // What it gives back is the same.
    await to.library.open(new Blob([file]));
    expect(to.state().found!.entries.map(({ standing }) => standing)).toEqual(['same', 'same']);
    await from.library.open(new Blob([await fileOf(to)]));
    expect(from.state().found!.entries.map(({ standing }) => standing)).toEqual(['same', 'new', 'same']);
    await to.library.undo();
    expect(to.state().library).toMatchObject({ exercises: [], texts: before.texts });
    await to.library.open(new Blob([file]));
    expect(to.state().found!.entries.map(({ standing }) => standing)).toEqual(['out-here', 'out-here']);
    // It is taken in all the same where somebody says so.
    await to.library.takeOne('exercises', from.state().library.exercises[0]!.id);
    expect(to.state().library.exercises).toMatchObject([{ name: slides.name, by: 'AB' }]);
    expect(to.state().library.texts).toEqual(before.texts);
    expect(to.state()).toMatchObject({
      canUndo: true,
      found: { entries: [{ standing: 'same' }, { standing: 'out-here' }] },
    });
  });

  it('refuses a file that was changed, is not signed, or is something else', async () => {
    const from = await open('AB');
    await from.library.keep('exercises', slides);
    const file = await fileOf(from);
    const to = await open('KN');
    const sentenceOf = async (text: string) => {
      await to.library.open(new Blob([text]));
      expect(to.state().found).toBeNull();
      return to.state().sentence;
    };
    expect(await sentenceOf(file.replace('Slowly', 'Quickly'))).toMatch(/changed after that/);
    expect(await sentenceOf(`${file.split('\n')[0]}\nnull\n`)).toMatch(/not signed/);
    expect(await sentenceOf(file.split('\n')[0]!)).toMatch(/signature is damaged/);
    expect(await sentenceOf('{"format":"overfoot-plan"}\n')).toMatch(/not a practice’s library/);
  });

  it('writes nothing over a library that can’t be read, and says what can’t be kept', async () => {
    const device = createTestDevice();
    await (await device.open()).notes.write('library', '{');
    const damaged = await open('AB', device);
    expect(damaged.state().sentence).toMatch(/can’t be read/);
    await damaged.library.keep('exercises', slides);
    expect(damaged.state().sentence).toMatch(/can’t be read/);
    expect((await damaged.repository.notes.read()).get('library')).toBe('{');
    const isFull = await open('AB', createTestDevice(), {
      change: () => Promise.reject(new Problem('storage', 'It is full.')),
    });
    await isFull.library.keep('exercises', slides);
    expect(isFull.state()).toMatchObject({ sentence: 'It is full.', library: { exercises: [] } });
  });

  it('keeps stages, undoes changes of them one by one, and goes back to the program’s', async () => {
    const { library, device, state } = await open('AB');
    const exercise = 'lateral-step-down';
    expect(state()).toMatchObject({ stages: {}, canUndoStages: false });
    await library.changeStages(exercise, () => [stage('From 8 cm.')]);
    expect(state()).toMatchObject({ stages: { [exercise]: [stage('From 8 cm.')] }, canUndoStages: true });
    // Two at once: each changes what the other one made of it.
    await Promise.all([
      library.changeStages(exercise, ([first]) => [{ ...first!, words: 'From 8 cm, slowly.' }]),
      library.changeStages(exercise, ([first]) => [first!, { ...stage('From 10 cm.'), id: 'step-10' }]),
    ]);
    const both = [stage('From 8 cm, slowly.'), { ...stage('From 10 cm.'), id: 'step-10' }];
    expect(state().stages).toEqual({ [exercise]: both });
    expect((await open('KN', device)).state().stages).toEqual({ [exercise]: both });
    await library.changeStages(exercise, null);
    expect(state().stages).toEqual({});
    await library.undoStages();
    expect(state().stages).toEqual({ [exercise]: both });
    await library.undoStages();
    await library.undoStages();
    expect(state()).toMatchObject({ stages: { [exercise]: [stage('From 8 cm.')] }, canUndo: false });
    await library.undoStages();
    expect(state()).toMatchObject({ stages: {}, canUndoStages: false });
    expect((await open('KN', device)).state().stages).toEqual({});
  });

  it('shows what arrives while it is open, and does not undo what a colleague changed since', async () => {
    const { library, repository, state } = await open('AB');
    await library.keep('exercises', slides);
    await library.changeStages('lateral-step-down', () => [stage('Ours.')]);
    const theirs = { at: '2026-04-13T00:00:00.000Z', by: 'KN' };
    await repository.library.change((kept) =>
      withEntry(
        withEntry(kept, 'exercises', { ...kept.exercises[0]!, ...theirs, how: 'Theirs.' }),
        'stages',
        { ...theirs, exercise: 'lateral-step-down', stages: [stage('Theirs.')] },
      ),
    );
    await expect.poll(() => state().stages['lateral-step-down']).toEqual([stage('Theirs.')]);
    expect(state().library.exercises).toMatchObject([{ how: 'Theirs.', by: 'KN' }]);
    await library.undo();
    expect(state().sentence).toMatch(/changed again since then/);
    await library.undoStages();
    expect(state().sentence).toMatch(/changed again since then/);
    expect(state()).toMatchObject({
      library: { exercises: [{ how: 'Theirs.' }] },
      stages: { 'lateral-step-down': [stage('Theirs.')] },
      canUndo: false,
      canUndoStages: false,
    });
  });

  it('says that earlier stages can’t be read, and leaves them', async () => {
    const device = createTestDevice();
    await (await device.open()).notes.write('stages', 'no JSON');
    const { library, repository, state } = await open('AB', device);
    expect(state()).toMatchObject({
      stages: {},
      sentence: expect.stringMatching(/left as they are/) as string,
    });
    await library.changeStages('lateral-step-down', () => [stage('Ours.')]);
    expect((await repository.notes.read()).get('stages')).toBe('no JSON');
  });

  it('says where nothing can be signed, and saves nothing', async () => {
    const { library, saved, state } = await open('AB', createTestDevice(), {
      signer: () => Promise.resolve(null),
    });
    await library.save();
    expect(saved).toEqual([]);
    expect(state().sentence).toMatch(/can’t sign/);
  });
});

describe('libraryCandidates(draft, library)', () => {
  it('is what the library does not have, or has otherwise; first limits begin the next item', async () => {
    const { library, state } = await open('AB');
    const item = smallItem();
    const narrow = { ...item.limits, 'knee-angle': { least: -4, most: 5 } };
    const draft = {
      freeItems: [slides, { ...slides, name: '' }],
      items: [item, { ...item, limits: narrow }],
    };
    const candidates = libraryCandidates(draft, state().library);
    expect(candidates.map(({ kind }) => kind)).toEqual(['exercises', 'limits']);
    await library.keep('exercises', slides);
    await library.keep('limits', { task: item.task, limits: narrow });
    expect(libraryCandidates({ ...draft, items: [{ ...item, limits: narrow }] }, state().library)).toEqual(
      [],
    );
    expect(withFirstLimits(item, state().library)).toEqual({ ...item, limits: narrow });
  });
});
