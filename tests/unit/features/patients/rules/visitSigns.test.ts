import { describe, expect, it } from 'vitest';
import type { ClinicianFlagId } from '#core/safety/clinicianFlagIds';
import type { RedFlagsRecord } from '#documents/patient/caseEntries';
import { visitSigns } from '#features/patients/rules/visitSigns';

const visit = (day: number, asked: ClinicianFlagId[], applied: ClinicianFlagId[]): RedFlagsRecord => {
  const on = `2026-04-${String(day).padStart(2, '0')}`;
  return { ...{ id: on, at: `${on}T10:00:00.000Z`, by: 'AB', withdrawn: null }, on, asked, applied };
};

describe('visitSigns(visits)', () => {
  it('has the signs that applied when they were last asked about', () => {
    const first = visit(3, ['calf', 'cancer', 'locked'], ['calf', 'cancer']);
    expect(visitSigns([first])).toEqual({ count: 2, on: '2026-04-03' });
    // The calf was asked about again and no longer applies; of cancer nobody asked.
    expect(visitSigns([visit(9, ['calf'], []), first])).toEqual({ count: 1, on: '2026-04-03' });
    expect(visitSigns([visit(9, ['calf', 'locked'], ['locked']), first])).toEqual({
      count: 2,
      on: '2026-04-09',
    });
  });

  it('is null where none stands, and of what was taken out', () => {
    expect(visitSigns([])).toBeNull();
    expect(visitSigns([visit(3, ['calf'], [])])).toBeNull();
    const mistake = {
      ...visit(3, ['calf'], ['calf']),
      withdrawn: { at: '2026-04-04T08:00:00.000Z', by: 'AB' },
    };
    expect(visitSigns([mistake])).toBeNull();
  });
});
