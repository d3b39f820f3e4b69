import { describe, expect, it } from 'vitest';
import type { InboxVisit } from '#features/sessions/rules/inboxVisit';
import { takenLimits } from '#features/sessions/rules/takenLimits';
import type { LimitsSet } from '#documents/recording/reviewSchema';
import { inboxSet, inboxVisit } from '../../../../support/inboxVisit';

const setOn = (day: number, kneeInwardDeg: number): LimitsSet => ({
  limits: { kneeInwardDeg, kneeOutwardDeg: 12 },
  by: 'T1',
  at: `2026-04-${String(day).padStart(2, '0')}T18:00:00.000Z`,
});
const startedOn = (day: number) => `2026-04-${String(day).padStart(2, '0')}T06:00:00.000Z`;

/** A visit of one set, on a day of April. */
function visitOn(
  day: number,
  limitsSet: LimitsSet | null,
  change: Partial<InboxVisit> & { line?: Parameters<typeof inboxSet>[0] } = {},
): InboxVisit {
  const { line, ...rest } = change;
  const set = inboxSet({ ...line, limitsSet, line: { sessionId: `set-of-${day}`, ...line?.line } });
  return inboxVisit({ id: `visit-of-${day}`, startedAt: startedOn(day), sets: [set], ...rest });
}

describe('takenLimits(visits, sessionId)', () => {
  it('finds those that were set last for the same patient, task and side, with the day of that session', () => {
    const visits = [visitOn(9, null), visitOn(5, setOn(6, 7)), visitOn(2, setOn(3, 15))];
    expect(takenLimits(visits, 'set-of-9')).toEqual({ ...setOn(6, 7), takenFrom: startedOn(5) });
  });

  it('goes by when they were set, not by when the session was done', () => {
    const visits = [visitOn(9, null), visitOn(5, setOn(6, 7)), visitOn(2, setOn(8, 15))];
    expect(takenLimits(visits, 'set-of-9')?.limits.kneeInwardDeg).toBe(15);
  });

  it('keeps the day on which they were set first, however often they were taken over', () => {
    const carried = { ...setOn(3, 15), takenFrom: startedOn(2) };
    const visits = [visitOn(9, null), visitOn(5, carried)];
    expect(takenLimits(visits, 'set-of-9')).toEqual(carried);
  });

  it('takes those of another set of the same visit', () => {
    const sets = [
      inboxSet({ line: { sessionId: 'first' } }),
      inboxSet({ line: { sessionId: 'second', number: 2 }, limitsSet: setOn(9, 5) }),
    ];
    expect(takenLimits([visitOn(9, null, { sets })], 'first')?.limits.kneeInwardDeg).toBe(5);
  });

  it('takes none of a later session, of another patient, task or side, nor its own', () => {
    const others = [
      visitOn(9, setOn(9, 4)),
      visitOn(10, setOn(11, 4)),
      visitOn(5, setOn(6, 4), { patient: 'somebody-else' }),
      visitOn(4, setOn(6, 4), { line: { line: { task: 'single-leg-squat' } } }),
      visitOn(3, setOn(6, 4), { line: { line: { side: 'left' } } }),
    ];
    expect(takenLimits(others, 'set-of-9')).toBeNull();
  });

  it('takes none for a set of nobody, or one that is not there', () => {
    const nobody = { patient: '' };
    const visits = [visitOn(9, null, nobody), visitOn(5, setOn(6, 7), nobody)];
    expect(takenLimits(visits, 'set-of-9')).toBeNull();
    expect(takenLimits(visits, 'elsewhere')).toBeNull();
  });

  it('leaves a newer plan its limits, and goes before an older one', () => {
    const made = (day: number) => ({ plan: { id: 'new-plan', madeAt: startedOn(day) } });
    const before = visitOn(5, setOn(6, 7), { plan: { id: 'old-plan', madeAt: startedOn(1) } });
    expect(takenLimits([visitOn(9, null, made(7)), before], 'set-of-9')).toBeNull();
    expect(takenLimits([visitOn(9, null, made(6)), before], 'set-of-9')?.limits.kneeInwardDeg).toBe(7);
  });

  it('goes before a plan of unknown age only where both visits followed it', () => {
    const followed = (id: string) => ({ plan: { id, madeAt: null } });
    const visit = visitOn(9, null, followed('a'));
    expect(takenLimits([visit, visitOn(5, setOn(6, 7), followed('a'))], 'set-of-9')).not.toBeNull();
    expect(takenLimits([visit, visitOn(5, setOn(6, 7), followed('b'))], 'set-of-9')).toBeNull();
    expect(takenLimits([visit, visitOn(5, setOn(6, 7))], 'set-of-9')).toBeNull();
  });
});
