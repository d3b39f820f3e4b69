import { describe, expect, it } from 'vitest';
import { sideChoices } from '#features/planning/rules/sideChoices';
import { sideSentences } from '#features/planning/rules/sideSentences';
import { smallHold, smallItem } from '../../../../support/smallPlan';

describe('sideChoices(painful)', () => {
  it('begins with the painful leg, and names it', () => {
    expect(sideChoices('left').map(({ name }) => name)).toEqual([
      'Left leg (painful)',
      'Right leg (other)',
      'Both, left first',
      'Both, right first',
    ]);
  });

  it('names none as painful where nothing is noted, or both are', () => {
    for (const painful of [null, 'both'] as const)
      expect(sideChoices(painful).map(({ name }) => name)).toEqual([
        'Right leg',
        'Left leg',
        'Both, right first',
        'Both, left first',
      ]);
  });
});

describe('sideSentences(items, painful)', () => {
  const [left, right] = [smallItem({ sides: ['left'] }), smallHold({ sides: ['right'] })];

  it('says nothing where all tasks are for one leg, for both, or still open', () => {
    expect(sideSentences([left, left], 'left')).toEqual([]);
    expect(sideSentences([left, smallItem({ sides: ['right', 'left'] })], null)).toEqual([]);
    expect(sideSentences([left, smallHold({ sides: [] })], 'left')).toEqual([]);
  });

  it('names tasks that are for different legs', () => {
    expect(sideSentences([left, right, left], null)).toEqual([
      'The tasks are for different legs: left alone in 1 (Split-stance sit-to-stand) and 3 (Split-stance sit-to-stand), right alone in 2 (Quadriceps press, held).',
    ]);
  });

  it('names tasks that leave the painful leg out', () => {
    expect(sideSentences([right], 'left')).toEqual([
      'The left knee is noted as the painful one; without it: 1 (Quadriceps press, held).',
    ]);
  });
});
