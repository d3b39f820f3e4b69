import { describe, expect, it } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import { compareLibraries, mergeLibraries } from '#documents/library/compareLibraries';
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
const here: LibraryDocument = {
  ...emptyLibrary,
  exercises: [slides],
  texts: [words],
  limits: [limits],
  templates: [template],
};
const read = (library: unknown) => parseDocument(JSON.stringify(library), libraryKind);

describe('libraryKind', () => {
  it('reads what is kept, as it is', () => {
    expect(read(emptyLibrary)).toEqual(emptyLibrary);
    expect(read(here)).toEqual(here);
  });

  it.each([
    [{ ...here, version: 2 }, /is of version 2; this program reads up to 1/],
    [{ ...here, format: 'overfoot-plan' }, /is not a practice’s library/],
    [{ ...here, patient: 'Blue Heron 7' }, /damaged/],
    [{ ...here, exercises: [{ ...slides, name: '' }] }, /"exercises.0.name"/],
    [{ ...here, texts: [{ ...words, id: slides.id }] }, /the same entry twice/],
    [{ ...here, limits: [limits, { ...limits, id: idOf(9) }] }, /two limits of one task/],
    [{ ...here, templates: [{ ...template, draft: { items: [{ kind: 'other' }] } }] }, /Knee can’t be shown/],
    [{ ...here, texts: Array.from({ length: libraryBounds.entries + 1 }, () => words) }, /"texts" \(Too big/],
  ])('refuses what is damaged, with a sentence (%#)', (data, sentence) => {
    expect(() => read(data)).toThrow(sentence);
  });
});

describe('mergeLibraries(here, there)', () => {
  const there: LibraryDocument = {
    ...emptyLibrary,
    exercises: [{ ...slides, ...entry(1, 2, 'KN'), how: 'Very slowly.' }],
    texts: [{ ...words, at: '2026-03-01T00:00:00.000Z', text: 'Older words.' }],
    limits: [{ ...limits, ...entry(8, 3, 'KN') }],
    templates: [template, { ...template, ...entry(5, 1), name: 'Hip' }],
  };

  it('takes what is new or was changed later there, and leaves the rest', () => {
    expect(compareLibraries(here, there).map(({ kind, standing }) => [kind, standing])).toEqual([
      ['exercises', 'newer'],
      ['texts', 'older'],
      ['limits', 'newer'], // Of the same task, by another id.
      ['templates', 'same'],
      ['templates', 'new'],
    ]);
    expect(mergeLibraries(here, there)).toEqual({
      ...there,
      texts: [words],
    });
    expect(read(mergeLibraries(here, there))).toEqual(mergeLibraries(here, there));
  });

  it('is the same whichever side is first, and nothing new the second time', () => {
    const merged = mergeLibraries(here, there)!;
    expect(mergeLibraries(there, here)).toEqual(merged);
    expect(mergeLibraries(merged, there)).toEqual(merged);
  });

  it('is null where it would hold more than it can', () => {
    const many = (from: number): LibraryDocument => ({
      ...emptyLibrary,
      texts: Array.from({ length: libraryBounds.entries }, (_, index) => ({
        ...words,
        id: `00000000-0000-4000-8000-${String(from + index).padStart(12, '0')}`,
      })),
    });
    expect(mergeLibraries(many(0), many(0))).toEqual(many(0));
    expect(mergeLibraries(many(0), many(1))).toBeNull();
  });
});
