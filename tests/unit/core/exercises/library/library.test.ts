import { describe, expect, it } from 'vitest';
import { cueFor } from '#core/exercises/library/cueFor';
import { findEntry, libraryIds } from '#core/exercises/library/findEntry';
import { phases } from '#core/exercises/library/libraryEntry';
import { planRanges } from '#documents/plan/planRanges';
import { holdIds } from '#core/exercises/holds';
import { taskIds } from '#core/exercises/tasks';

it('the library holds every task and hold once', () => {
  expect([...libraryIds].sort()).toEqual([...taskIds, ...holdIds].sort());
});

describe.each(libraryIds)('findEntry(%s)', (id) => {
  const entry = findEntry(id);
  const isHold = holdIds.some((hold) => hold === id);

  it('says what it is for, how it is done, in which stages, and what often goes wrong', () => {
    expect(entry.purpose).toMatch(/^[A-Z].*\.$/);
    expect(entry.steps.length).toBeGreaterThan(1);
    expect(entry.stages.length).toBeGreaterThan(1);
    expect(entry.faults.length).toBeGreaterThan(0);
    for (const line of [...entry.steps, ...entry.cautions, ...entry.faults.map(({ cue }) => cue)])
      expect(line).toMatch(/^\S.*[.]$/);
  });

  it('has a dose within what a plan takes, with its source', () => {
    const { sets, repetitions, holds, restSeconds, worksUpTo, source } = entry.dose;
    const within = (value: number, { min, max }: { min: number; max: number }) =>
      value >= min && value <= max;
    expect(within(sets, planRanges.sets) && within(restSeconds, planRanges.restSeconds)).toBe(true);
    expect(isHold).toBe(holds !== null);
    expect(isHold).toBe(repetitions === null);
    if (repetitions !== null) expect(within(repetitions, planRanges.repetitions)).toBe(true);
    if (holds !== null)
      expect(within(holds.count, planRanges.holds) && within(holds.seconds, planRanges.holdSeconds)).toBe(
        true,
      );
    if (worksUpTo !== null) {
      expect(worksUpTo.min).toBeGreaterThan(repetitions ?? Infinity);
      expect(worksUpTo.max).toBeGreaterThanOrEqual(worksUpTo.min);
    }
    expect(source).not.toBe('');
  });

  it('has a cue for a knee that leaves its lane either way, whenever it does', () => {
    for (const direction of ['inward', 'outward'] as const)
      for (const phase of phases) expect(cueFor(id, direction, phase) !== null).toBe(!isHold);
  });

  it('judges nobody and promises nothing', () => {
    expect(JSON.stringify(entry)).not.toMatch(/\b(wrong|bad|fail|abnormal|prevent|injur|risk|heal|cure)/i);
  });
});

it('the split stance is the one whose treatment is known to work up to 20 to 25 repetitions', () => {
  const goals = libraryIds.flatMap((id) => findEntry(id).dose.worksUpTo ?? []);
  expect(goals).toEqual([{ min: 20, max: 25 }]);
  expect(findEntry('split-stance-sit-to-stand').dose.worksUpTo).toEqual(goals[0]);
});

it('cueFor(task, direction, phase) prefers what shows in that phase', () => {
  expect(cueFor('split-stance-sit-to-stand', 'other', 'going')).toBe('Push through the front heel.');
  expect(cueFor('split-stance-sit-to-stand', 'other', 'coming-back')).toBe(
    'Sit down as slowly as you stood up.',
  );
});
