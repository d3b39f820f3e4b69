import { describe, expect, it } from 'vitest';
import { exerciseIds, exercises, findExercise, findTask, taskIds } from '#core/exercises/exercises';
import { cueFor } from '#core/exercises/library/cueFor';
import { phases } from '#core/exercises/library/fault';
import { planRanges } from '#documents/plan/planRanges';

describe('findTask(id)', () => {
  it.each(taskIds)('knows %s by its own id', (id) => {
    expect(findTask(id).id).toBe(id);
  });
});

describe('exercises', () => {
  it.each(exerciseIds)('has %s by its own id', (id) => {
    expect(findExercise(id).id).toBe(id);
  });

  it('gives each its own id and place in a treatment', () => {
    for (const key of ['id', 'treatmentOrder'] as const)
      expect(new Set(exercises.map((exercise) => exercise[key])).size).toBe(exercises.length);
  });
});

describe('preparation', () => {
  it('begins seated where there is a seat, and asks for a chair only there', () => {
    for (const task of taskIds) {
      const { shape, preparation } = findTask(task);
      expect(preparation.start).toBe(shape === 'rise' ? 'seated' : 'standing');
      expect(preparation.needs.includes('chair')).toBe(preparation.start === 'seated');
    }
  });

  it('asks for easy bends exactly where a stance foot shows the view and both thighs do not', () => {
    for (const task of taskIds) {
      const { viewSigns, preparation } = findTask(task);
      const fromOneFoot = viewSigns.includes('stance-foot') && !viewSigns.includes('thighs');
      expect(preparation.easyBends).toBe(fromOneFoot);
    }
  });
});

describe.each(exercises)('$id', (exercise) => {
  it('says what it is for, its stages, and what often goes wrong', () => {
    expect(exercise.purpose).toMatch(/^[A-Z].*\.$/);
    expect(exercise.stages.length).toBeGreaterThan(1);
    expect(exercise.faults.length).toBeGreaterThan(0);
    for (const line of exercise.faults.map(({ cue }) => cue)) expect(line).toMatch(/^\S.*[.]$/);
  });

  it('has a dose within what a plan takes, with its source', () => {
    const { sets, restSeconds, source } = exercise.dose;
    const within = (value: number, { min, max }: { min: number; max: number }) =>
      value >= min && value <= max;
    expect(within(sets, planRanges.sets) && within(restSeconds, planRanges.restSeconds)).toBe(true);
    expect(source).not.toBe('');
    if (exercise.kind === 'hold') {
      const { count, seconds } = exercise.dose.holds;
      expect(within(count, planRanges.holds) && within(seconds, planRanges.holdSeconds)).toBe(true);
      return;
    }
    const { repetitions, worksUpTo } = exercise.dose;
    expect(within(repetitions, planRanges.repetitions)).toBe(true);
    if (worksUpTo === null) return;
    expect(worksUpTo.min).toBeGreaterThan(repetitions);
    expect(worksUpTo.max).toBeGreaterThanOrEqual(worksUpTo.min);
  });

  it('has a cue for a knee that leaves its lane either way, in any phase', () => {
    for (const direction of ['inward', 'outward'] as const)
      for (const phase of phases)
        expect(cueFor(exercise.id, direction, phase) !== null).toBe(exercise.kind === 'task');
  });

  it('judges nobody and promises nothing', () => {
    const { purpose, stages, faults, dose } = exercise;
    expect(JSON.stringify({ purpose, stages, faults, dose })).not.toMatch(
      /\b(wrong|bad|fail|abnormal|prevent|injur|risk|heal|cure)/i,
    );
  });
});

it('only the split stance names a treatment that builds up to 20 to 25 repetitions', () => {
  const goals = taskIds.flatMap((id) => findTask(id).dose.worksUpTo ?? []);
  expect(goals).toEqual([{ min: 20, max: 25 }]);
  expect(findTask('split-stance-sit-to-stand').dose.worksUpTo).toEqual(goals[0]);
});
