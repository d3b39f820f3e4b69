import { describe, expect, it } from 'vitest';
import { freePainLimit, freeRecording } from '#documents/plan/freeRecording';
import { itemName } from '#documents/plan/itemName';
import { planSchema } from '#documents/plan/planDocument';
import { planSteps } from '#documents/plan/planSteps';
import { smallHold, smallItem, smallPlan } from '../../../support/smallPlan';

describe('planSteps(items)', () => {
  it('goes through all sets of one side, then of the other, then to the next item, with rest between', () => {
    const items = [smallItem({ sides: ['right', 'left'], sets: 2, restSeconds: 40 }), smallHold()];
    const steps = planSteps(items);
    expect(steps.map(({ itemIndex, side, number, ofSets }) => [itemIndex, side, number, ofSets])).toEqual([
      [0, 'right', 1, 2],
      [0, 'right', 2, 2],
      [0, 'left', 1, 2],
      [0, 'left', 2, 2],
      [1, 'left', 1, 1],
    ]);
    expect(steps.map(({ change }) => change)).toEqual([
      'first',
      'next-set',
      'other-side',
      'next-set',
      'next-item',
    ]);
    // The rest belongs to the item before.
    expect(steps.map(({ restSeconds }) => restSeconds)).toEqual([0, 40, 40, 40, 40]);
    expect(steps[4]!.item).toBe(items[1]);
  });

  it('goes from side to side where they take turns', () => {
    const steps = planSteps([smallItem({ sides: ['right', 'left'], sets: 2, sidesInTurn: true })]);
    expect(steps.map(({ side, number, change }) => [side, number, change])).toEqual([
      ['right', 1, 'first'],
      ['left', 1, 'other-side'],
      ['right', 2, 'other-side'],
      ['left', 2, 'other-side'],
    ]);
  });

  it('gives nothing for no items', () => {
    expect(planSteps([])).toEqual([]);
  });
});

describe('freeRecording(choice)', () => {
  const choice = { task: 'single-leg-squat', side: 'left', sets: 3, repetitions: 8 } as const;

  it('is an item that a plan could hold', () => {
    const plan = smallPlan({ items: [freeRecording(choice)], painLimit: freePainLimit });
    expect(planSchema.parse(plan)).toEqual(plan);
  });

  it('contains its sets', () => {
    expect(planSteps([freeRecording(choice)]).map(({ side, number }) => [side, number])).toEqual([
      ['left', 1],
      ['left', 2],
      ['left', 3],
    ]);
  });
});

describe('itemName(item)', () => {
  it('names tasks and holds', () => {
    expect(itemName(smallItem())).toBe('Split-stance sit-to-stand');
    expect(itemName(smallHold())).toBe('Quadriceps press, held');
  });
});
