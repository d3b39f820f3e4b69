import { describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/exercises';
import { atStage, stageOf, upToOf } from '#documents/plan/itemProgress';
import { finishDraft, newDraft, newItem } from '#documents/plan/planDraft';
import { smallHold, smallItem } from '../../../support/smallPlan';

describe('atStage(item, stage)', () => {
  it.each(exercises.map((exercise) => [exercise.id, exercise] as const))(
    'makes an item of a %s at each of its stages that a plan can hold',
    (id, { stages }) => {
      for (const stage of stages) {
        const item = { ...atStage(newItem(id), stage), sides: ['left' as const] };
        expect(stageOf(item)).toBe(stage);
        const draft = { ...newDraft(), patient: 'Grey Otter 3', items: [item] };
        expect(
          finishDraft(draft, 'b7d4b0a5-2c55-4d6c-8a6e-3f1de2c86f14', '2024-03-05T07:08:09.010Z').kind,
        ).toBe('plan');
      }
    },
  );

  it('takes over the figures of the stage, and leaves open what it leaves open', () => {
    const item = smallItem({ task: 'lateral-step-down', seatHeightCm: null, support: 'hand', sets: 3 });
    const stage = stageOf({ task: 'lateral-step-down', stage: 'step-15-slow' });
    expect(atStage(item, stage)).toMatchObject({
      stage: 'step-15-slow',
      stepHeightCm: 15,
      support: 'none',
      load: null,
      tempo: { downSeconds: 3, pauseSeconds: 1, upSeconds: 2 },
      repetitions: 10,
      sets: 3,
    });
    const [, , third] = exercises.find(({ id }) => id === 'quad-press-hold')!.stages;
    expect(atStage(smallHold(), third!)).toMatchObject({ stage: 'hard-30', holds: 4, holdSeconds: 30 });
  });

  it('keeps the figures where no stage is chosen', () => {
    expect(atStage(smallItem({ stage: 'seat-46' }), null)).toEqual(smallItem());
  });
});

describe('upToOf(item)', () => {
  it('is what the item says, else its stage, else the dose of the library', () => {
    const task = 'split-stance-sit-to-stand';
    expect(upToOf({ task, stage: 'seat-46', upTo: { min: 8, max: 9 } })).toEqual({ min: 8, max: 9 });
    expect(upToOf({ task: 'lateral-step-down', stage: 'step-15', upTo: null })).toEqual({ min: 15, max: 15 });
    expect(upToOf({ task, stage: null, upTo: null })).toEqual({ min: 20, max: 25 });
    expect(upToOf({ task: 'single-leg-squat', stage: 'their-own', upTo: null })).toBeNull();
  });
});
