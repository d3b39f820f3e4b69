import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import { compareLibraries } from '#documents/library/compareLibraries';
import {
  LibraryFull,
  mergeLibraries,
  undone,
  withEntry,
  withoutEntry,
} from '#documents/library/libraryChanges';
import { emptyLibrary, libraryBounds, type LibraryDocument } from '#documents/library/libraryDocument';
import { libraryKind } from '#documents/library/libraryKind';
import { newDraft, templateOf } from '#documents/plan/planDraft';
import { parseDocument } from '#documents/reading/readDocument';
import { smallItem } from '../../../support/smallPlan';

const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const entry = (digit: number, day: number, by = 'AB') => ({
  id: idOf(digit),
  at: `2026-04-0${day}T06:00:00.000Z`,
  by,
});
const slides = { ...entry(1, 1), name: 'Heel slides', how: 'Slowly.', dose: '2 sets of 10' };
const words = { ...entry(2, 1), name: 'First weeks', text: 'Little and often.' };
const limits = { ...entry(3, 1), task: 'lateral-step-down' as const, limits: { ...defaultLimits } };
const draft = templateOf({ ...newDraft(), items: [smallItem()] });
const template = { ...entry(4, 1), name: 'Knee', draft: { ...draft } };
const wallSit = {
  at: '2026-04-01T06:00:00.000Z',
  by: 'AB',
  exercise: 'wall-sit-hold' as const,
  stages: [{ id: 'short', words: 'Ten seconds.', holds: { count: 3, seconds: 10 } }],
};
const outLimits = { kind: 'limits' as const, key: 'single-leg-squat', at: '2026-04-01T06:00:00.000Z' };
const here: LibraryDocument = {
  ...emptyLibrary,
  exercises: [slides],
  texts: [words],
  limits: [limits],
  templates: [template],
  stages: [wallSit],
  removed: [outLimits],
};
const read = (library: unknown) => parseDocument(JSON.stringify(library), libraryKind);

describe('libraryKind', () => {
  it('reads what is kept, as it is', () => {
    expect(read(emptyLibrary)).toEqual(emptyLibrary);
    expect(read(here)).toEqual(here);
  });

  it('migrates version 1, which had no stages and did not remember what was removed', () => {
    const { stages, removed, ...first } = here;
    expect(read({ ...first, version: 1 })).toEqual({ ...first, version: 2, stages: [], removed: [] });
  });

  it.each([
    [{ ...here, version: 3 }, /is of version 3; this program reads up to 2/],
    [{ ...here, version: 0 }, /damaged/],
    [{ ...here, format: 'overfoot-plan' }, /is not a practice’s library/],
    [{ ...here, patient: 'Blue Heron 7' }, /damaged/],
    [{ ...here, exercises: [{ ...slides, name: '' }] }, /"exercises.0.name"/],
    [{ ...here, texts: [words, words] }, /the same entry twice/],
    [{ ...here, removed: [{ ...outLimits, kind: 'texts', key: words.id }] }, /the same entry twice/],
    [{ ...here, removed: [outLimits, outLimits] }, /two limits of one task/],
    [{ ...here, stages: [wallSit, wallSit] }, /two sets of stages of one exercise/],
    [{ ...here, stages: [{ ...wallSit, exercise: 'lateral-step-down' }] }, /another kind of exercise/],
    [{ ...here, stages: [{ ...wallSit, stages: [] }] }, /"stages.0.stages"/],
    [{ ...here, limits: [limits, { ...limits, id: idOf(9) }] }, /two limits of one task/],
    [{ ...here, templates: [{ ...template, draft: { items: [{ kind: 'other' }] } }] }, /Knee can’t be shown/],
    [{ ...here, texts: Array.from({ length: libraryBounds.entries + 1 }, () => words) }, /"texts" \(Too big/],
  ])('refuses what is damaged, with a sentence (%#)', (data, sentence) => {
    expect(() => read(data)).toThrow(sentence);
  });
});

describe('mergeLibraries(here, there), compareLibraries(here, there)', () => {
  const there: LibraryDocument = {
    ...emptyLibrary,
    exercises: [{ ...slides, ...entry(1, 2, 'KN'), how: 'Very slowly.' }],
    texts: [{ ...words, at: '2026-03-01T00:00:00.000Z', text: 'Older words.' }],
    limits: [{ ...limits, ...entry(8, 3, 'KN') }],
    templates: [template, { ...template, ...entry(5, 1), name: 'Hip' }],
    removed: [{ kind: 'stages', key: 'wall-sit-hold', at: '2026-04-02T06:00:00.000Z' }],
  };

  it('take what is new or was changed later there, and leave the rest', () => {
    expect(compareLibraries(here, there).map(({ kind, standing }) => [kind, standing])).toEqual([
      ['exercises', 'newer'],
      ['texts', 'older'],
      ['limits', 'newer'], // Of the same task, by another id.
      ['templates', 'same'],
      ['templates', 'new'],
      ['stages', 'out-there'],
    ]);
    expect(mergeLibraries(here, there)).toEqual({
      ...there,
      texts: [words],
      removed: [outLimits, ...there.removed],
    });
    expect(read(mergeLibraries(here, there))).toEqual(mergeLibraries(here, there));
  });

  it('leave out what was removed later, and bring back what was changed after that', () => {
    const without = withoutEntry(here, 'exercises', slides.id, '2026-04-05T06:00:00.000Z');
    expect(without.exercises).toEqual([]);
    expect(mergeLibraries(without, here)).toEqual(without);
    expect(compareLibraries(without, here).find(({ kind }) => kind === 'exercises')).toMatchObject({
      standing: 'out-here',
    });
    const later = { ...slides, ...entry(1, 6, 'KN') };
    const changed = withEntry(here, 'exercises', later);
    expect(mergeLibraries(without, changed).exercises).toEqual([later]);
    expect(mergeLibraries(changed, without).exercises).toEqual([later]);
    expect(compareLibraries(without, changed).find(({ kind }) => kind === 'exercises')).toMatchObject({
      standing: 'newer',
    });
  });

  it('leave out what was removed on a device whose clock is behind', () => {
    const without = withoutEntry(here, 'exercises', slides.id, '2020-01-01T00:00:00.000Z');
    expect(without.removed).toContainEqual({
      kind: 'exercises',
      key: slides.id,
      at: '2026-04-01T06:00:00.001Z',
    });
    expect(mergeLibraries(here, without).exercises).toEqual([]);
    const back = withEntry(without, 'exercises', { ...slides, at: '2020-01-01T00:00:00.000Z' });
    expect(back.exercises).toEqual([{ ...slides, at: '2026-04-01T06:00:00.002Z' }]);
    expect(mergeLibraries(without, back).exercises).toEqual(back.exercises);
  });

  it('stay within what a document can say, however far a clock is ahead', () => {
    const far = { ...slides, at: '9999-12-31T23:59:59.999Z' };
    const changed = withEntry({ ...here, exercises: [far] }, 'exercises', { ...far, how: 'Quickly.' });
    expect(read(changed).exercises).toEqual([{ ...far, how: 'Quickly.' }]);
  });

  it('refuse more than one can hold, of a kind and in all', () => {
    const many = (from: number): LibraryDocument => ({
      ...emptyLibrary,
      texts: Array.from({ length: libraryBounds.entries }, (_, index) => ({
        ...words,
        id: `00000000-0000-4000-8000-${String(from + index).padStart(12, '0')}`,
      })),
    });
    expect(mergeLibraries(many(0), many(0))).toEqual(many(0));
    expect(() => mergeLibraries(many(0), many(1))).toThrow(LibraryFull);
    const long = { ...emptyLibrary, templates: [{ ...template, draft: { note: 'x'.repeat(1_400_000) } }] };
    expect(() => mergeLibraries(here, long)).toThrow(LibraryFull);
    // Even then something can be taken out.
    expect(withoutEntry(long, 'templates', template.id, '2026-05-01T00:00:00.000Z').templates).toEqual([]);
  });

  it('remember the latest thousand that were removed', () => {
    const removed = Array.from({ length: 1000 }, (_, index) => ({
      kind: 'texts' as const,
      key: `gone-${String(index).padStart(4, '0')}`,
      at: '2026-03-01T00:00:00.000Z',
    }));
    const full = withoutEntry({ ...here, removed }, 'texts', words.id, '2026-05-01T00:00:00.000Z');
    expect(full.removed).toHaveLength(1000);
    expect(full.removed[0]!.key).toBe('gone-0001');
    expect(full.removed.at(-1)!.key).toBe(words.id);
    expect(read(full)).toEqual(full);
  });

  const times = [1, 2, 3].map((day) => `2026-04-0${day}T06:00:00.000Z`);
  /** What may have happened to a few entries; times repeat, so that ties are tried as well. */
  const libraries = fc
    .array(
      fc.record({
        kind: fc.constantFrom('texts' as const, 'limits' as const, 'stages' as const),
        which: fc.integer({ min: 0, max: 1 }),
        at: fc.constantFrom(...times),
        says: fc.constantFrom('A', 'B', null),
      }),
      { maxLength: 6 },
    )
    .map((all): LibraryDocument => {
      const library = structuredClone(emptyLibrary);
      const known = new Set<string>();
      for (const { kind, which, at, says } of all) {
        if (known.has(`${kind} ${which}`)) continue;
        known.add(`${kind} ${which}`);
        const task = (['lateral-step-down', 'single-leg-squat'] as const)[which]!;
        const exercise = (['wall-sit-hold', 'quad-press-hold'] as const)[which]!;
        const stages = wallSit.stages.map((stage) => ({ ...stage, words: says ?? '' }));
        const key = { texts: idOf(which), limits: task, stages: exercise }[kind];
        if (says === null) library.removed.push({ kind, key, at });
        else if (kind === 'texts')
          library.texts.push({ id: idOf(which), at, by: 'AB', name: 'x', text: says });
        else if (kind === 'stages') library.stages.push({ exercise, at, by: 'AB', stages });
        else library.limits.push({ ...limits, id: idOf(which + 2), task, at, by: says });
      }
      return library;
    });

  it('make the same of libraries in whatever order they become one, and nothing new the second time', () => {
    fc.assert(
      fc.property(libraries, libraries, libraries, (a, b, c) => {
        const both = mergeLibraries(a, b);
        expect(mergeLibraries(b, a)).toEqual(both);
        expect(mergeLibraries(both, c)).toEqual(mergeLibraries(a, mergeLibraries(b, c)));
        expect(mergeLibraries(both, a)).toEqual(both);
        expect(mergeLibraries(both, b)).toEqual(both);
        expect(mergeLibraries(both, both)).toEqual(both);
        expect(read(both)).toEqual(both);
      }),
      { numRuns: 500 },
    );
  });

  it('take whatever is done to a merged library over both that it was made of', () => {
    fc.assert(
      fc.property(libraries, libraries, (a, b) => {
        const both = mergeLibraries(a, b);
        const changed = withEntry(both, 'texts', { ...words, id: idOf(0), at: times[0]! });
        expect(mergeLibraries(changed, a)).toEqual(changed);
        expect(mergeLibraries(b, changed)).toEqual(changed);
        const without = withoutEntry(changed, 'texts', idOf(0), times[0]!);
        expect(without.texts.some(({ id }) => id === idOf(0))).toBe(false);
        expect(mergeLibraries(mergeLibraries(a, changed), without)).toEqual(without);
      }),
      { numRuns: 200 },
    );
  });
});

describe('undone(library, done, at)', () => {
  const at = '2026-04-09T06:00:00.000Z';

  it('is what was there before, as a later change', () => {
    const changed = withEntry(here, 'texts', { ...words, at: '2026-04-08T06:00:00.000Z', text: 'Other.' });
    const back = undone(changed, { before: here, after: changed }, at);
    expect(back.texts).toEqual([{ ...words, at }]);
    const without = withoutEntry(here, 'texts', words.id, '2026-04-08T06:00:00.000Z');
    expect(undone(without, { before: here, after: without }, at)).toMatchObject({
      texts: [{ ...words, at }],
      removed: [outLimits],
    });
    const added = withEntry(here, 'texts', { ...words, ...entry(7, 8) });
    expect(undone(added, { before: here, after: added }, at).removed).toContainEqual({
      kind: 'texts',
      key: idOf(7),
      at,
    });
  });

  it('leaves what was changed again since', () => {
    const changed = withEntry(here, 'texts', { ...words, at: '2026-04-08T06:00:00.000Z', text: 'Other.' });
    const since = withEntry(changed, 'texts', { ...words, at: '2026-04-08T07:00:00.000Z', text: 'Theirs.' });
    expect(undone(since, { before: here, after: changed }, at)).toBe(since);
  });
});
