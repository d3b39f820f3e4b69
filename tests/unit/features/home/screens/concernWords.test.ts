import { expect, it } from 'vitest';
import { cautionsOf } from '#documents/plan/cautions';
import { concernAdvice } from '#features/home/screens/concernWords';
import { smallPlan } from '../../../../support/smallPlan';

const plan = smallPlan({ ifItGivesWay: 'Sit down and call the practice.' });

it('answers a fall with the words of the plan, and says when to see a doctor', () => {
  const [fromPlan, ...more] = concernAdvice({ kind: 'fell' }, cautionsOf(plan));
  expect(fromPlan).toBe('Your therapist says: Sit down and call the practice.');
  expect(more.join(' ')).toContain('See a doctor today');
});

it('says the same words once after a knee that gave way and a fall', () => {
  const cautions = cautionsOf(plan);
  const advice = [{ kind: 'stopped', reason: 'gave-way' } as const, { kind: 'fell' } as const].flatMap(
    (concern) => concernAdvice(concern, cautions),
  );
  expect(new Set(advice).size).toBe(2);
});

it('answers a fall without a plan by itself', () => {
  const advice = concernAdvice({ kind: 'fell' }, cautionsOf(null)).join(' ');
  expect(advice).toContain('Do not exercise until');
  expect(advice).toContain('See a doctor today');
});
