import { group, mean } from 'd3-array';
import { csvParse } from 'd3-dsv';
import { beforeAll, describe, expect, it } from 'vitest';
import { usualSureness } from '#core/chance/grade';
import { readFhirBundle } from '#documents/exchange/readFhirBundle';
import { patientReport } from '#features/patients/rules/report/patientReport';
import { reportText } from '#features/patients/rules/report/reportLine';
import { therapistReport } from '#features/patients/rules/report/therapistReport';
import { patientBundle } from '#features/patients/store/patientBundle';
import { patientRepetitions, patientSessions } from '#features/patients/store/patientTables';
import { saidIn } from '#words/messages/message';
import { spanish } from '#words/messages/spanish';
import { openDemoDevice } from '../../../../../support/demoDevice';
import { fhirFaults } from '../../../../../support/fhirFaults';

describe('reports of the demo clinic', () => {
  let device: Awaited<ReturnType<typeof openDemoDevice>>;
  beforeAll(async () => {
    device = await openDemoDevice();
  }, 120_000);
  const caseOf = (pseudonym: string) => device.cases.find(({ patient }) => patient.pseudonym === pseudonym)!;
  const reportOf = (pseudonym: string) => reportText(therapistReport(caseOf(pseudonym)));

  it('tell a change beyond error, none, and a flare-up of pain', () => {
    expect(reportOf('Invented Heron 11')).toMatch(/right: Mean inward .* less inward, beyond error/);
    expect(reportOf('Invented Otter 12')).toMatch(/right: Mean inward .* No change beyond error/);
    expect(reportOf('Invented Swift 13')).toMatch(/Stopped or not begun because of the body: 1\./);
    expect(reportOf('Invented Swift 13')).toMatch(/The most was 7, on Sun 10 May 2026\./);
  });

  it('have 8 to 14 lines, and say that they are invented', () => {
    for (const reported of device.cases) {
      const lines = therapistReport(reported);
      expect(lines.length).toBeGreaterThanOrEqual(8);
      expect(lines.length).toBeLessThanOrEqual(14);
      expect(lines[1]!.text).toContain('invented');
    }
  });

  it('are these, word by word', () => {
    expect(reportOf('Invented Otter 12')).toMatchSnapshot();
    expect(reportText(patientReport(caseOf('Invented Heron 11')))).toMatchSnapshot();
    expect(
      saidIn('es', spanish, () => reportText(patientReport(caseOf('Invented Heron 11')))),
    ).toMatchSnapshot();
  });

  it('have the numbers of the tables', async () => {
    for (const reported of device.cases) {
      const { sessions, patient } = reported;
      const repetitions = csvParse((await patientRepetitions(device.kept, sessions, usualSureness)).slice(1));
      expect(new Set(repetitions.map((row) => row['patient']))).toEqual(new Set([patient.pseudonym]));
      const right = repetitions.filter((row) => row['side'] === 'right');
      const days = [...group(right, (row) => row['date'])].map(([, rows]) =>
        mean(rows, (row) => Number(row['knee_angle_largest_deg']))!,
      );
      const control = therapistReport(reported).find(({ head }) => head.endsWith(', right'))!;
      const [, then, now] = /angle: (.*?)° \(3 days\) then, (.*?)° \(3 days\) now/.exec(control.text)!;
      // The report has one decimal, the table two.
      expect(Math.abs(Number(then) - mean(days.slice(0, 3))!)).toBeLessThan(0.06);
      expect(Math.abs(Number(now) - mean(days.slice(-3))!)).toBeLessThan(0.06);
    }
  });

  it('have a row a session, with pain as it was said', () => {
    const { sessions, patient } = caseOf('Invented Swift 13');
    const rows = csvParse(patientSessions(sessions, patient.note).slice(1));
    expect(rows).toHaveLength(11);
    expect(rows[0]).toMatchObject({ patient: 'Invented Swift 13', date: '2026-04-23', pain_during: '2' });
    expect(rows[5]).toMatchObject({
      pain_before: '3',
      pain_during: '6',
      pain_after: '7',
      ended_because: 'pain',
    });
    expect(rows[5]!['note']).toContain('invented');
  });

  it('go with bundles of valid FHIR R4 that hold them, and the numbers of the tables', async () => {
    for (const reported of device.cases) {
      const { patient, sessions } = reported;
      const bundle: unknown = JSON.parse(await patientBundle(device.kept, reported));
      expect(fhirFaults(bundle)).toEqual([]);
      const record = readFhirBundle(bundle);
      const [title, ...lines] = therapistReport(reported);
      expect(record.report).toEqual({ title: title!.text, lines });

      const rows = csvParse(patientSessions(sessions, patient.note).slice(1));
      const said = (score: number | null | undefined) => (score ?? '').toString();
      expect(
        record.sessions.map(({ painBefore, painAfter, effort, dayAfter }) =>
          [painBefore, painAfter, effort, dayAfter?.worst].map(said),
        ),
      ).toEqual(
        rows.map((row) => [row['pain_before'], row['pain_after'], row['effort'], row['pain_next_day']]),
      );

      const repetitions = csvParse((await patientRepetitions(device.kept, sessions, usualSureness)).slice(1));
      const sets = record.sessions.flatMap((session) => session.sets.map((set) => ({ session, set })));
      const measured = sets.filter(({ set }) => set.result !== null && set.result.peak !== null);
      expect(measured.length).toBeGreaterThan(5);
      for (const { session, set } of measured) {
        const own = repetitions.filter(
          (row) =>
            row['session'] === session.id &&
            row['side'] === set.side &&
            row['task'] === set.task &&
            row['set'] === String(set.number) &&
            row['completeness'] === 'complete',
        );
        const { repetitions: count, peak } = set.result!;
        expect(own).toHaveLength(count);
        // The table has two decimals.
        expect(peak!.meanDeg).toBeCloseTo(
          mean(own, (row) => Number(row['knee_angle_largest_deg']))!,
          2,
        );
      }
    }
  });
});
