import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exercises, findExercise, type ExerciseId } from '#core/exercises/exercises';
import { appliesAtHome, autoSteps, nextStep } from '#core/programme/nextStep';
import { proposalKinds, type Proposal, type ProposalKind } from '#core/programme/proposal';

const proposed = (proposal: ProposalKind, repetitions?: number): Proposal => ({
  proposal,
  ...(repetitions === undefined ? {} : { repetitions }),
  reasons: [],
});
const split = (stage: string) => ({ exercise: 'split-stance-sit-to-stand', stage }) as const;

describe('nextStep(proposal, place)', () => {
  const [first, second, third, last] = findExercise('split-stance-sit-to-stand').stages;

  it('goes one stage up or down', () => {
    expect(nextStep(proposed('step-up'), split(second!.id))).toEqual({
      kind: 'other-stage',
      stage: third,
      number: 3,
      of: 4,
    });
    expect(nextStep(proposed('step-down'), split(second!.id))).toEqual({
      kind: 'other-stage',
      stage: first,
      number: 1,
      of: 4,
    });
  });

  it('leads from the hardest stage to the easiest of the exercise that follows', () => {
    const single = findExercise('single-leg-sit-to-stand').stages;
    expect(nextStep(proposed('step-up'), split(last!.id))).toEqual({
      kind: 'other-exercise',
      exercise: 'single-leg-sit-to-stand',
      stage: single[0],
    });
    const hardest = { exercise: 'single-leg-sit-to-stand', stage: single.at(-1)!.id } as const;
    expect(nextStep(proposed('step-up'), hardest)).toEqual({ kind: 'no-harder' });
  });

  it('has nothing harder than the hardest stage of a hold', () => {
    const hold = {
      exercise: 'quad-press-hold',
      stage: findExercise('quad-press-hold').stages.at(-1)!.id,
    } as const;
    expect(nextStep(proposed('step-up'), hold)).toEqual({ kind: 'no-harder' });
  });

  it('has nothing easier than the easiest stage', () => {
    expect(nextStep(proposed('step-down'), split(first!.id))).toEqual({ kind: 'no-easier' });
  });

  it('stays at the stage, with more repetitions or after a day of rest', () => {
    const here = { kind: 'same', stage: second, number: 2, of: 4 };
    const at = split(second!.id);
    expect(nextStep(proposed('stay'), at)).toEqual({ ...here, restDayFirst: false, repetitions: null });
    expect(nextStep(proposed('more', 14), at)).toEqual({ ...here, restDayFirst: false, repetitions: 14 });
    expect(nextStep(proposed('repeat'), at)).toEqual({ ...here, restDayFirst: true, repetitions: null });
  });

  it('holds at any stage', () => {
    expect(nextStep(proposed('hold'), split(first!.id))).toEqual({ kind: 'hold' });
  });

  it("goes through a practice's own stages", () => {
    const stages = [
      { id: 'a', words: 'One.', start: 5, upTo: { min: 8, max: 8 } },
      { id: 'b', words: 'Two.', start: 4, upTo: { min: 8, max: 8 } },
    ];
    expect(nextStep(proposed('step-up'), { ...split('a'), stages })).toMatchObject({ stage: stages[1] });
  });

  it('refuses a stage that the exercise does not have', () => {
    expect(() => nextStep(proposed('stay'), split('seat-30'))).toThrow(
      'There is no stage "seat-30", only "seat-50", "seat-46"',
    );
  });

  it('never moves by more than one stage, whatever is proposed', () => {
    const places = exercises.flatMap(({ id, stages }) =>
      stages.map((stage, at) => ({ exercise: id, stage: stage.id, at })),
    );
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.constantFrom(...proposalKinds), (place, kind) => {
        const step = nextStep(proposed(kind), place);
        if ('number' in step) expect(Math.abs(step.number - 1 - place.at)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('appliesAtHome(proposal, autoStep)', () => {
  it('lets the device add repetitions or repeat, and nothing else, where the plan allows it', () => {
    const applied = (autoStep: (typeof autoSteps)[number]) =>
      proposalKinds.filter((kind) => appliesAtHome(proposed(kind), autoStep));
    expect(autoSteps.map(applied)).toEqual([[], [], ['more', 'repeat']]);
  });
});

describe.each(exercises)('the stages of $id', ({ id, kind, stages }) => {
  it('are told apart and say in a sentence what is done', () => {
    expect(new Set(stages.map((stage) => stage.id)).size).toBe(stages.length);
    expect(new Set(stages.map(({ words }) => words)).size).toBe(stages.length);
    for (const { words } of stages) expect(words).toMatch(/^[A-Z].*\.$/);
  });

  it('have a dose that can be worked through', () => {
    for (const stage of stages)
      if ('start' in stage) {
        expect(stage.start).toBeLessThanOrEqual(stage.upTo.min);
        expect(stage.upTo.min).toBeLessThanOrEqual(stage.upTo.max);
      } else expect(stage.holds.count * stage.holds.seconds).toBeGreaterThan(0);
    expect(stages.every((stage) => 'holds' in stage)).toBe(kind === 'hold');
  });

  it('name every figure that they fix in their words', () => {
    for (const { words, seatHeightCm, stepHeightCm } of stages) {
      if (seatHeightCm !== undefined) expect(words).toContain(`${seatHeightCm} cm`);
      if (stepHeightCm !== undefined) expect(words).toContain(`${stepHeightCm} cm`);
    }
  });

  it('lead to an exercise that there is', () => {
    const exercise = findExercise(id);
    if (exercise.kind === 'task' && exercise.leadsTo !== undefined)
      expect(exercises.map((each): ExerciseId => each.id)).toContain(exercise.leadsTo);
  });
});
