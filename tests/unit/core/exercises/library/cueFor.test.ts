import { expect, it } from 'vitest';
import { cueFor } from '#core/exercises/library/cueFor';

it('cueFor(task, direction, phase) prefers the cue for that phase', () => {
  expect(cueFor('split-stance-sit-to-stand', 'other', 'going')).toBe('Push through the front heel.');
  expect(cueFor('split-stance-sit-to-stand', 'other', 'coming-back')).toBe(
    'Sit down as slowly as you stood up.',
  );
});
