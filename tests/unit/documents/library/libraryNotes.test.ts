import { describe, expect, it } from 'vitest';
import { findExercise } from '#core/exercises/exercises';
import { emptyLibrary, type LibraryDocument } from '#documents/library/libraryDocument';
import { readLibraryNotes, type LibraryNotes } from '#documents/library/libraryNotes';
import { stagesFor, type PracticeStages } from '#documents/library/stages';
import { newDraft, templateOf } from '#documents/plan/planDraft';
import { smallItem } from '../../../support/smallPlan';

const stepDown = [
  {
    id: 'step-8',
    words: 'From a step of 8 cm.',
    stepHeightCm: 8,
    support: 'fingertip' as const,
    load: { kind: 'weight' as const, level: '2 kg', where: 'hand' as const },
    tempo: { downSeconds: 4 },
    start: 6,
    upTo: { min: 12, max: 12 },
  },
];
const wallSit = [{ id: 'short', words: 'Ten seconds.', holds: { count: 3, seconds: 10 } }];
const own: PracticeStages = { 'lateral-step-down': stepDown, 'wall-sit-hold': wallSit };
const note = (exercises: object) =>
  JSON.stringify({ format: 'overfoot-stages', version: 1, exercises: exercises });
const none: LibraryNotes = { library: null, stages: null, templates: null };
const id = '1b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11';
const read = (notes: Partial<LibraryNotes>) => readLibraryNotes({ ...none, ...notes }, () => id);
const unknown = { at: '1970-01-01T00:00:00.000Z', by: '' };
const kept = (library: Partial<LibraryDocument>) => JSON.stringify({ ...emptyLibrary, ...library });

describe('readLibraryNotes(notes, newId)', () => {
  it('is an empty library where there is nothing', () => {
    const nothing = { library: emptyLibrary, isMigrated: false, hasUnreadableStages: false };
    expect(read({})).toEqual(nothing);
    expect(read({ library: '', stages: '' })).toEqual(nothing);
  });

  it('takes earlier stages over, with a library of version 1 beside them', () => {
    const text = {
      id,
      at: '2026-04-01T06:00:00.000Z',
      by: 'AB',
      name: 'First weeks',
      text: 'Little and often.',
    };
    const first = {
      format: 'overfoot-library',
      version: 1,
      exercises: [],
      texts: [text],
      limits: [],
      templates: [],
    };
    expect(read({ library: JSON.stringify(first), stages: note(own) })).toEqual({
      library: {
        ...emptyLibrary,
        texts: [text],
        stages: [
          { exercise: 'lateral-step-down', stages: stepDown, ...unknown },
          { exercise: 'wall-sit-hold', stages: wallSit, ...unknown },
        ],
      },
      isMigrated: true,
      hasUnreadableStages: false,
    });
  });

  it('takes no earlier stages over where the library has others, or they were removed', () => {
    const at = '2026-04-01T06:00:00.000Z';
    const library: Partial<LibraryDocument> = {
      stages: [
        {
          exercise: 'lateral-step-down',
          stages: [{ ...stepDown[0]!, words: 'Changed since.' }],
          at,
          by: 'AB',
        },
      ],
      removed: [{ kind: 'stages', key: 'wall-sit-hold', at }],
    };
    expect(read({ library: kept(library), stages: note(own) })).toEqual({
      library: { ...emptyLibrary, ...library },
      isMigrated: true,
      hasUnreadableStages: false,
    });
  });

  it('takes every stage of the program as it is', () => {
    const all = Object.fromEntries(
      (['lateral-step-down', 'single-leg-squat', 'wall-sit-hold', 'quad-press-hold'] as const).map(
        (exercise) => [exercise, findExercise(exercise).stages],
      ),
    );
    const { library } = read({ stages: note(all) });
    expect(Object.fromEntries(library.stages.map(({ exercise, stages }) => [exercise, stages]))).toEqual(all);
  });

  it.each([
    'no JSON',
    '{}',
    note({ 'lateral-step-down': [] }),
    note(own).replace('"stepHeightCm":8', '"stepHeightCm":800'),
    note(own).replace('"version":1', '"version":2'),
    note(own).replace('wall-sit-hold', 'tea'),
    note({ 'wall-sit-hold': stepDown }),
    note({ 'lateral-step-down': [...stepDown, ...stepDown] }),
  ])('leaves earlier stages that can’t be read where they are: %s', (stages) => {
    expect(read({ stages })).toEqual({
      library: emptyLibrary,
      isMigrated: false,
      hasUnreadableStages: true,
    });
  });

  it('has the templates from before there was a library, and leaves out what can’t be read', () => {
    const draft = templateOf({ ...newDraft(), items: [smallItem()] });
    const templates = JSON.stringify([
      { name: 'Knee', draft },
      { name: 'x', draft: { items: [{ kind: 'other' }] } },
      null,
    ]);
    expect(read({ templates })).toEqual({
      library: { ...emptyLibrary, templates: [{ id, ...unknown, name: 'Knee', draft: { ...draft } }] },
      isMigrated: true,
      hasUnreadableStages: false,
    });
    expect(read({ templates, library: kept({}) }).library.templates).toEqual([]);
  });

  it.each(['{', '{"format":"overfoot-library","version":9}', kept({ stages: 'none' } as never)])(
    'throws where the library can’t be read: %s',
    (library) => {
      expect(() => read({ library, stages: note(own) })).toThrow(/library/);
    },
  );
});

describe('stagesFor(exercise, own)', () => {
  it('are the practice’s, else the program’s', () => {
    expect(stagesFor('lateral-step-down', own)).toBe(own['lateral-step-down']);
    expect(stagesFor('single-leg-squat', own)).toBe(findExercise('single-leg-squat').stages);
  });
});
