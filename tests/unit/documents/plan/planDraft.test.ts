import { describe, expect, it } from 'vitest';
import { libraryIds } from '#core/exercises/library/libraryIds';
import {
  finishDraft,
  newDraft,
  newItem,
  nextPlanOf,
  templateOf,
  type PlanDraft,
} from '#documents/plan/planDraft';
import { planSteps } from '#documents/plan/planSteps';
import { smallHold, smallItem, smallPlan } from '../../../support/smallPlan';

const [id, createdAt] = ['b7d4b0a5-2c55-4d6c-8a6e-3f1de2c86f14', '2024-03-05T07:08:09.010Z'];
const finish = (change: Partial<PlanDraft>) =>
  finishDraft({ ...newDraft(), patient: 'Grey Otter 3', items: [smallItem()], ...change }, id, createdAt);
const sentenceOf = (change: Partial<PlanDraft>) => {
  const finished = finish(change);
  return 'sentence' in finished ? finished.sentence : null;
};

describe('newItem(id)', () => {
  it.each(libraryIds)('doses a %s as the library does, ready for a plan once a side is chosen', (task) => {
    const item = { ...newItem(task), sides: ['left' as const] };
    expect(finish({ items: [item] }).kind).toBe('plan');
    expect(planSteps([item]).length).toBeGreaterThan(0);
  });
});

describe('finishDraft(draft, id, createdAt)', () => {
  it('makes a plan of what makes sense', () => {
    expect(finish({ words: 'Slowly.' })).toMatchObject({
      plan: { id, createdAt, patient: 'Grey Otter 3', words: 'Slowly.' },
    });
  });

  it.each<[Partial<PlanDraft>, string]>([
    [{ patient: ' ' }, 'Give the patient a pseudonym; never their name.'],
    [{ items: [] }, 'Add at least one task.'],
    [
      { items: [smallItem(), smallItem({ sides: [] })] },
      'Choose the side of task 2 (Split-stance sit-to-stand).',
    ],
    [{ beyondPainLimit: '' }, 'Say what the patient should do when the pain goes above the limit.'],
    [{ items: [smallItem({ repetitions: 0 })] }, 'Item 1 asks for 0 repetitions, where 1 to 200 make sense.'],
    [
      { items: [smallItem({ sets: 1.5 })] },
      'Item 1 asks for 1.5 sets, where a whole number from 1 to 20 makes sense.',
    ],
    [{ items: [smallItem({ sets: 0.5 })] }, 'Item 1 asks for 0.5 sets, where 1 to 20 make sense.'],
    [{ perWeek: 2.5 }, 'The plan asks for 2.5 times a week, where a whole number from 1 to 14 makes sense.'],
    [
      { painLimit: 2.5 },
      'The plan asks for 2.5 as the pain limit, where a whole number from 0 to 10 makes sense.',
    ],
    [
      { items: [smallItem(), smallHold({ holdSeconds: 9000 })] },
      'Item 2 asks for 9000 seconds a hold, where 1 to 600 make sense.',
    ],
    [{ painLimit: 11 }, 'The plan asks for 11 as the pain limit, where 0 to 10 make sense.'],
    [{ reviewDate: '2024-03-04' }, 'The review date (2024-03-04) is before the day it was made.'],
  ])('says of %j what to do or what makes no sense', (change, sentence) => {
    expect(sentenceOf(change)).toBe(sentence);
  });

  it('distinguishes a draft that the form could not have made from one that makes no sense', () => {
    expect(finish({ footwear: 'boots' as string as 'shoes' })).toMatchObject({ kind: 'damaged' });
    expect(finish({ painLimit: 11 })).toMatchObject({ kind: 'senseless' });
    expect(finish({ patient: '' })).toMatchObject({ kind: 'incomplete' });
  });

  it('says where a limit lies inside its opposite', () => {
    const limits = { 'knee-angle': { least: -3, most: -4 } };
    expect(sentenceOf({ items: [smallItem({ limits })] })).toMatch(
      /^In item 1 one limit of .* lies inside its opposite/,
    );
  });
});

describe('nextPlanOf(plan)', () => {
  it('takes over everything but the review date and the note', () => {
    const { reviewDate, note, ...rest } = nextPlanOf(smallPlan({ usualPain: 3 }));
    expect([reviewDate, note]).toEqual([null, '']);
    expect(rest).toMatchObject({ patient: 'Grey Otter 3', items: smallPlan().items, usualPain: 3 });
  });
});

describe('templateOf(draft)', () => {
  it('leaves out what is one patient’s alone, and the side of what one leg does', () => {
    const both = smallItem({ sides: ['left', 'right'] });
    const template = templateOf(nextPlanOf(smallPlan({ items: [smallItem(), both], mayGoOnAbove: true })));
    expect(template).toMatchObject({ patient: '', words: '', mayGoOnAbove: false, painLimit: 4 });
    expect(template.items).toEqual([smallItem({ sides: [] }), both]);
  });
});
