import { describe, expect, it } from 'vitest';
import type { TaskId } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { measureSet } from '#core/measurement/measureSet';
import { filmPerson } from '../../../support/syntheticPerson';

const setupOf = (task: TaskId) => ({ task, side: 'left' }) as const;
/** Found times are not true to the millisecond. */
const nearMs = 40;

describe('measureSet(track, setup)', () => {
  const { track } = filmPerson({ task: 'split-stance-sit-to-stand' });
  const setup = setupOf('split-stance-sit-to-stand');
  const whole = measure(track, setup);
  const seatOffMs = whole.repetitions.map(({ events }) => events.seatOffMs!);

  it('equals measure(track, setup) where all of the recording is the set', () => {
    expect(measureSet(track, setup)).toEqual(whole);
  });

  it('leaves out what was loaded before go, and counts the rest from 1', () => {
    const { repetitions, notes } = measureSet(track, { ...setup, goMs: seatOffMs[0]! + 1000 });
    expect(repetitions.map(({ number }) => number)).toEqual([1, 2]);
    expect(repetitions.map(({ events }) => events.seatOffMs)).toEqual(seatOffMs.slice(1));
    expect(notes).toEqual(whole.notes);
  });

  it('accepts somebody who is half a second ahead of go', () => {
    const countOf = (goMs: number) => measureSet(track, { ...setup, goMs }).repetitions.length;
    expect(countOf(seatOffMs[0]! + 499)).toBe(3);
    expect(countOf(seatOffMs[0]! + 501)).toBe(2);
  });

  it('counts by the moment of load, not by the lean before it', () => {
    const { events } = whole.repetitions[0]!;
    expect(events.seatOffMs! - events.startMs).toBeGreaterThan(nearMs);
    expect(measureSet(track, { ...setup, goMs: events.startMs + 500 + nearMs }).repetitions).toHaveLength(3);
  });

  it('does not take the quiet stand before a sit-to-stand for a repetition that was cut off', () => {
    const standing = filmPerson({
      task: 'split-stance-sit-to-stand',
      filmed: { fromMs: (whole.repetitions[0]!.events.topMs! + 100) | 0, untilMs: Infinity },
    }).track;
    const found = measure(standing, setup).repetitions;
    expect(found.map(({ completeness }) => completeness)).toEqual(['cut-at-start', 'complete', 'complete']);
    const goMs = found[0]!.events.endMs;
    expect(
      measureSet(standing, { ...setup, goMs }).repetitions.map(({ completeness }) => completeness),
    ).toEqual(['complete', 'complete']);
  });

  it('counts a squat by its beginning', () => {
    const squats = filmPerson({ task: 'single-leg-squat' }).track;
    const found = measure(squats, setupOf('single-leg-squat')).repetitions;
    const goMs = found[1]!.events.startMs + 501;
    const { repetitions } = measureSet(squats, { ...setupOf('single-leg-squat'), goMs });
    expect(repetitions.map(({ events }) => events.startMs)).toEqual([found[2]!.events.startMs]);
  });

  it('notes that nothing is left', () => {
    const { repetitions, notes } = measureSet(track, { ...setup, goMs: seatOffMs.at(-1)! + 5000 });
    expect(repetitions).toEqual([]);
    expect(notes).toEqual([...whole.notes, { kind: 'no-repetitions' }]);
  });
});
