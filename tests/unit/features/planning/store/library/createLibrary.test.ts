import { describe, expect, it } from 'vitest';
import { Problem } from '#core/problem';
import { newDraft, templateOf } from '#documents/plan/planDraft';
import { libraryCandidates, withFirstLimits } from '#features/planning/rules/libraryCandidates';
import { createLibrary, type LibraryWorld } from '#features/planning/store/library/createLibrary';
import { smallItem } from '../../../../../support/smallPlan';
import { testSigner } from '../../../../../support/testLog';

const signer = await testSigner();
const slides = { name: 'Heel slides', how: 'Slowly.', dose: '2 sets of 10' };

function open(by: string, kept = new Map<string, string>(), parts: Partial<LibraryWorld> = {}) {
  const saved: { fileName: string; text: string }[] = [];
  let hour = 10;
  const library = createLibrary({
    read: (name) => kept.get(name) ?? null,
    write(text) {
      kept.set('library', text);
      return Promise.resolve();
    },
    initials: () => Promise.resolve(by),
    signer: () => Promise.resolve(signer),
    saveFile: (fileName, text) => void saved.push({ fileName, text }),
    newId: () => crypto.randomUUID(),
    now: () => new Date(`2026-04-12T${hour++}:00:00.000Z`),
    ...parts,
  });
  return { library, kept, saved, state: () => library.store.getState() };
}

async function fileOf({ library, saved }: ReturnType<typeof open>): Promise<string> {
  await library.save();
  return saved.at(-1)!.text;
}

describe('createLibrary(world)', () => {
  it('keeps entries by name, takes them out, and undoes the last change', async () => {
    const { library, kept, state } = open('AB');
    await library.keep('exercises', slides);
    const [first] = state().library.exercises;
    expect(first).toMatchObject({ ...slides, by: 'AB', at: '2026-04-12T10:00:00.000Z' });
    await library.keep('exercises', { ...slides, dose: '3 sets of 10' });
    expect(state().library.exercises).toMatchObject([{ id: first!.id, dose: '3 sets of 10' }]);
    await library.remove('exercises', first!.id);
    expect(state()).toMatchObject({ library: { exercises: [] }, canUndo: true });
    await library.undo();
    expect(state()).toMatchObject({ library: { exercises: [{ dose: '3 sets of 10' }] }, canUndo: false });
    expect(open('KN', kept).state().library).toEqual(state().library);
  });

  it('brings a colleague’s entries after a look, and can be undone', async () => {
    const from = open('AB');
    await from.library.keep('exercises', slides);
    await from.library.keep('texts', { name: 'First weeks', text: 'Little and often.' });
    const file = await fileOf(from);
    expect(from.saved[0]!.fileName).toBe('overfoot-library-2026-04-12.jsonl');
    const to = open('KN');
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
    expect(to.state().library).toEqual(before);
  });

  it('refuses a file that was changed, is not signed, or is something else', async () => {
    const from = open('AB');
    await from.library.keep('exercises', slides);
    const file = await fileOf(from);
    const to = open('KN');
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

  it('has the templates from before there was a library, and leaves out what can’t be read', () => {
    const draft = templateOf({ ...newDraft(), items: [smallItem()] });
    const templates = [{ name: 'Knee', draft }, { name: 'x', draft: { items: [{ kind: 'other' }] } }, null];
    const { state } = open('AB', new Map([['templates', JSON.stringify(templates)]]));
    expect(state().library.templates).toMatchObject([
      { name: 'Knee', draft: { painLimit: draft.painLimit } },
    ]);
  });

  it('writes nothing over a library that can’t be read, and says what can’t be kept', async () => {
    const damaged = open('AB', new Map([['library', '{']]));
    expect(damaged.state().sentence).toMatch(/can’t be read/);
    await damaged.library.keep('exercises', slides);
    expect(damaged.kept.get('library')).toBe('{');
    const isFull = open('AB', new Map(), {
      write: () => Promise.reject(new Problem('storage', 'It is full.')),
    });
    await isFull.library.keep('exercises', slides);
    expect(isFull.state()).toMatchObject({ sentence: 'It is full.', library: { exercises: [] } });
  });

  it('says where nothing can be signed, and saves nothing', async () => {
    const { library, saved, state } = open('AB', new Map(), { signer: () => Promise.resolve(null) });
    await library.save();
    expect(saved).toEqual([]);
    expect(state().sentence).toMatch(/can’t sign/);
  });
});

describe('libraryCandidates(draft, library)', () => {
  it('is what the library does not have, or has otherwise; first limits begin the next item', async () => {
    const { library, state } = open('AB');
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
