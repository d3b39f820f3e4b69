import { describe, expect, it } from 'vitest';
import { furnitureReminder, needsSameFurniture } from '#features/home/placing/checks/checkFurniture';

describe('furnitureReminder(id)', () => {
  it('names what an exercise stands or falls with', () => {
    expect(furnitureReminder('split-stance-sit-to-stand')).toMatch(/^Chair against the wall/);
    expect(furnitureReminder('lateral-step-down')).toMatch(/^Step firm/);
    expect(furnitureReminder('single-leg-squat')).toMatch(/firm to hold/);
  });
});

describe('needsSameFurniture(one, other)', () => {
  const need = (one: 'single-leg-sit-to-stand' | 'lateral-step-down') =>
    needsSameFurniture({ task: 'split-stance-sit-to-stand' }, { task: one });

  it('is true where nothing is moved in between', () => {
    expect(need('single-leg-sit-to-stand')).toBe(true);
    expect(need('lateral-step-down')).toBe(false);
  });
});
