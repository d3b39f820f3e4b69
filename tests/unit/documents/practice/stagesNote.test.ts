import { describe, expect, it } from 'vitest';
import { findExercise } from '#core/exercises/exercises';
import { readStages, stagesFor, writeStages, type PracticeStages } from '#documents/practice/stagesNote';

const own: PracticeStages = {
  'lateral-step-down': [
    {
      id: 'step-8',
      words: 'From a step of 8 cm.',
      stepHeightCm: 8,
      support: 'fingertip',
      load: { kind: 'weight', level: '2 kg', where: 'hand' },
      tempo: { downSeconds: 4 },
      start: 6,
      upTo: { min: 12, max: 12 },
    },
  ],
  'wall-sit-hold': [{ id: 'short', words: 'Ten seconds.', holds: { count: 3, seconds: 10 } }],
};

describe('readStages(text), writeStages(stages)', () => {
  it('give back what was kept', () => {
    expect(readStages(writeStages(own))).toEqual(own);
    expect(readStages(null)).toEqual({});
    expect(readStages('')).toEqual({});
  });

  it('take every stage of the library as it is', () => {
    const all = Object.fromEntries(
      (['lateral-step-down', 'single-leg-squat', 'wall-sit-hold', 'quad-press-hold'] as const).map((id) => [
        id,
        findExercise(id).stages,
      ]),
    );
    expect(readStages(writeStages(all))).toEqual(all);
  });

  it.each([
    'no JSON',
    '{}',
    writeStages({ 'lateral-step-down': [] }),
    writeStages(own).replace('"stepHeightCm":8', '"stepHeightCm":800'),
    writeStages(own).replace('"version":1', '"version":2'),
    writeStages(own).replace('wall-sit-hold', 'tea'),
  ])('can’t be read where something is wrong: %s', (text) => {
    expect(readStages(text)).toBeNull();
  });
});

describe('stagesFor(exercise, own)', () => {
  it('are the practice’s, else the library’s', () => {
    expect(stagesFor('lateral-step-down', own)).toBe(own['lateral-step-down']);
    expect(stagesFor('single-leg-squat', own)).toBe(findExercise('single-leg-squat').stages);
  });
});
