import { expect, it } from 'vitest';
import { showsThigh } from '#core/measurement/showsThigh';

const leg = { hip: { x: 0, y: 0 }, knee: { x: 0, y: 50 }, ankle: { x: 0, y: 150 }, heel: null, toe: null };

it('takes the thigh for shown from half the length of the shank on', () => {
  expect(showsThigh(leg)).toBe(true);
  expect(showsThigh({ ...leg, knee: { x: 0, y: 49.9 } })).toBe(false);
  // 30 to the side and 40 down are 50 away; the ankle is 100 below the knee.
  expect(showsThigh({ ...leg, knee: { x: 30, y: 40 }, ankle: { x: 30, y: 140 } })).toBe(true);
});

it.each(['hip', 'knee', 'ankle'] as const)('takes it for not shown where the %s was not seen', (joint) => {
  expect(showsThigh({ ...leg, [joint]: null })).toBe(false);
});
