import { describe, expect, it } from 'vitest';
import { ownError } from '#core/reliability/ownError';
import { clinicianFlags } from '#core/safety/clinicianFlags';
import { newPatient } from '#documents/patient/newPatient';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { therapistReport } from '#features/patients/rules/report/therapistReport';

const at = '2026-04-03T08:00:00.000Z';
const kept = (id: string) => ({ id, at, by: 'AB', withdrawn: null });
const lineOf = (head: string, change: Partial<PatientDocument>) => {
  const patient = { ...newPatient('Blue Heron 7', 'p', at), ...change };
  const nowMs = Date.parse('2026-04-20T08:00:00.000Z');
  const report = therapistReport({ patient, plans: [], sessions: [], nowMs, error: ownError([]) });
  return report.find((line) => line.head === head)?.text ?? null;
};

describe('therapistReport of a case', () => {
  it('says how it began, the surgery, and restrictions that count on its day', () => {
    const load = { ...kept('l'), side: 'left' as const, setBy: 'surgeon', kind: 'load' as const };
    const change = {
      ...{ painfulSide: 'left' as const, since: '2026-01-10', onset: 'sudden' as const },
      surgery: { what: 'invented operation', side: 'left' as const, on: '2026-01-12' },
      prescribedRestrictions: [
        { ...load, until: '2026-04-20' },
        { ...load, id: 'm', until: '2026-04-19' },
      ],
    };
    expect(lineOf('Reason', change)).toBe(
      'pain, left knee, since Sat 10 Jan 2026, all at once. Surgery: “invented operation”. Left knee, ' +
        'Monday 12 January 2026. Surgeon: no band or weight on the left leg, until Monday 20 April 2026.',
    );
  });

  it('says what the clinician asked about last, and nothing that was taken out', () => {
    const asked = clinicianFlags.map(({ id }) => id);
    const [first, second] = [
      { ...kept('a'), on: '2026-04-01', asked, applied: ['calf' as const] },
      { ...kept('b'), on: '2026-04-03', asked, applied: [] },
    ];
    expect(lineOf('Red flags', { redFlags: [second, first] })).toMatch(
      /^At the visit: Friday 3 April 2026, AB: 14 of 14 asked about, none applied\.$/,
    );
    const withdrawn = { ...second, withdrawn: { at, by: 'AB' } };
    expect(lineOf('Red flags', { redFlags: [withdrawn, first] })).toMatch(/applied: a calf/);
    expect(lineOf('Red flags', {})).toBeNull();
  });
});
