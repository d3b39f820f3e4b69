import { describe, expect, it } from 'vitest';
import type { LogEntry } from '#documents/patient/logEntry';
import { withReopened } from '#features/sessions/rules/withReopened';
import { listedSession } from '../../../../support/listedSession';

const at = (hour: number) => `2026-04-07T0${hour}:00:00.000Z`;
const entry = (what: LogEntry['what'], about: string, hour: number): LogEntry => ({
  id: `00000000-0000-4000-8000-00000000000${hour}`,
  at: at(hour),
  ...{ by: 'KN', what, about, after: [], key: '', signature: '' },
});
const { id } = listedSession();
const settlement = (by: 'therapist' | 'professional', hour: number) => ({
  visitId: id,
  by,
  who: 'AB',
  at: at(hour),
});
const first = settlement('therapist', 2);
const settled = listedSession({ settlement: first, settles: [first] });
const later = listedSession({
  id: '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d77',
  settles: [settlement('professional', 5)],
});

describe('withReopened(sessions, log)', () => {
  it('leaves what was not opened again as it is', () => {
    expect(withReopened([settled], [entry('review', id, 3)])).toEqual([settled]);
    expect(withReopened([settled], [entry('review-withdrawn', later.id, 3)])[0]).toBe(settled);
  });

  it('counts nothing that was settled up to then, and what is settled after it', () => {
    const [open] = withReopened([settled], [entry('review-withdrawn', id, 3)]);
    expect(open).toMatchObject({ isOpen: true, settlement: null, reopened: { by: 'KN', at: at(3) } });
    expect(withReopened([settled], [entry('review-withdrawn', id, 1)])[0]).toMatchObject({
      isOpen: false,
      settlement: first,
    });
    const cleared = withReopened([settled, later], [entry('review-withdrawn', id, 3)]);
    expect(cleared[0]).toMatchObject({ isOpen: false, settlement: { by: 'professional' } });
    expect(
      withReopened([settled, { ...later, patient: 'somebody else' }], [entry('review-withdrawn', id, 3)])[0],
    ).toMatchObject({ isOpen: true });
  });

  it('opens nothing where nothing was said of the body', () => {
    const calm = listedSession();
    expect(withReopened([calm], [entry('review-withdrawn', id, 3)])[0]).toMatchObject({ isOpen: false });
  });
});
