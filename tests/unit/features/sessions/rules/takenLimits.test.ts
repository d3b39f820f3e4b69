import { describe, expect, it } from 'vitest';
import type { LimitsSet } from '#documents/recording/reviewSchema';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { takenLimits } from '#features/sessions/rules/takenLimits';
import { listedRecording, listedSession } from '../../../../support/listedSession';

const setOn = (day: number, most: number): LimitsSet => ({
  limits: { 'knee-angle': { least: -12, most } },
  by: 'T1',
  at: `2026-04-${String(day).padStart(2, '0')}T18:00:00.000Z`,
});
const startedOn = (day: number) => `2026-04-${String(day).padStart(2, '0')}T06:00:00.000Z`;

/** A visit of one set, on a day of April. */
function sessionOn(
  day: number,
  limitsSet: LimitsSet | null,
  change: Partial<ListedSession> & { line?: Parameters<typeof listedRecording>[0] } = {},
): ListedSession {
  const { line, ...rest } = change;
  const set = listedRecording({ ...line, limitsSet, line: { sessionId: `set-of-${day}`, ...line?.line } });
  return listedSession({ id: `visit-of-${day}`, startedAt: startedOn(day), sets: [set], ...rest });
}

describe('takenLimits(visits, sessionId)', () => {
  it('finds those that were set last for the same patient, task and side, with the day of that session', () => {
    const sessions = [sessionOn(9, null), sessionOn(5, setOn(6, 7)), sessionOn(2, setOn(3, 15))];
    expect(takenLimits(sessions, 'set-of-9')).toEqual({ ...setOn(6, 7), takenFrom: startedOn(5) });
  });

  it('goes by when they were set, not by when the session was done', () => {
    const sessions = [sessionOn(9, null), sessionOn(5, setOn(6, 7)), sessionOn(2, setOn(8, 15))];
    expect(takenLimits(sessions, 'set-of-9')?.limits['knee-angle'].most).toBe(15);
  });

  it('keeps the day on which they were set first, however often they were taken over', () => {
    const carried = { ...setOn(3, 15), takenFrom: startedOn(2) };
    const sessions = [sessionOn(9, null), sessionOn(5, carried)];
    expect(takenLimits(sessions, 'set-of-9')).toEqual(carried);
  });

  it('takes those of another set of the same session', () => {
    const sets = [
      listedRecording({ line: { sessionId: 'first' } }),
      listedRecording({ line: { sessionId: 'second', number: 2 }, limitsSet: setOn(9, 5) }),
    ];
    expect(takenLimits([sessionOn(9, null, { sets })], 'first')?.limits['knee-angle'].most).toBe(5);
  });

  it('takes none of a later session, of another patient, task or side, nor its own', () => {
    const others = [
      sessionOn(9, setOn(9, 4)),
      sessionOn(10, setOn(11, 4)),
      sessionOn(5, setOn(6, 4), { patient: 'somebody-else' }),
      sessionOn(4, setOn(6, 4), { line: { line: { task: 'single-leg-squat' } } }),
      sessionOn(3, setOn(6, 4), { line: { line: { side: 'left' } } }),
    ];
    expect(takenLimits(others, 'set-of-9')).toBeNull();
  });

  it('takes none for a set of nobody, or one that is not there', () => {
    const nobody = { patient: '' };
    const sessions = [sessionOn(9, null, nobody), sessionOn(5, setOn(6, 7), nobody)];
    expect(takenLimits(sessions, 'set-of-9')).toBeNull();
    expect(takenLimits(sessions, 'elsewhere')).toBeNull();
  });

  it('leaves a newer plan its limits, and goes before an older one', () => {
    const made = (day: number) => ({ plan: { id: 'new-plan', madeAt: startedOn(day) } });
    const before = sessionOn(5, setOn(6, 7), { plan: { id: 'old-plan', madeAt: startedOn(1) } });
    expect(takenLimits([sessionOn(9, null, made(7)), before], 'set-of-9')).toBeNull();
    expect(takenLimits([sessionOn(9, null, made(6)), before], 'set-of-9')?.limits['knee-angle'].most).toBe(7);
  });

  it('goes before a plan of unknown age only where both visits followed it', () => {
    const followed = (id: string) => ({ plan: { id, madeAt: null } });
    const session = sessionOn(9, null, followed('a'));
    expect(takenLimits([session, sessionOn(5, setOn(6, 7), followed('a'))], 'set-of-9')).not.toBeNull();
    expect(takenLimits([session, sessionOn(5, setOn(6, 7), followed('b'))], 'set-of-9')).toBeNull();
    expect(takenLimits([session, sessionOn(5, setOn(6, 7))], 'set-of-9')).toBeNull();
  });
});
