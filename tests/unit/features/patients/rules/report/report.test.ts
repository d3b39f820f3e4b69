import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ownError } from '#core/reliability/ownError';
import { signIds } from '#core/safety/signs';
import { newPatient } from '#documents/patient/newPatient';
import { painfulSides, painSites } from '#documents/patient/patientDocument';
import { endReasons } from '#documents/session/sessionDocument';
import { patientReport } from '#features/patients/rules/report/patientReport';
import type { ReportCase } from '#features/patients/rules/report/reportFacts';
import { reportText } from '#features/patients/rules/report/reportLine';
import { therapistReport } from '#features/patients/rules/report/therapistReport';
import type { ListedSession, SetReading } from '#features/sessions/rules/listedSession';
import { saidIn } from '#words/messages/message';
import { spanish } from '#words/messages/spanish';
import { listedRecording, listedSession } from '../../../../../support/listedSession';
import { smallPlan } from '../../../../../support/smallPlan';
import { unfit } from '../../../../../support/unfitWords';

const promises = /ready|safe|normal|improved/i;
const broken = /undefined|null|NaN|\[object|Infinity/;

const score = fc.option(fc.integer({ min: 0, max: 10 }));
const reading: fc.Arbitrary<SetReading> = fc.oneof(
  fc.constant<SetReading>({ state: 'none' }),
  fc
    .record({
      mean: fc.double({ min: -20, max: 40, noNaN: true }),
      sem: fc.double({ min: 0.2, max: 8, noNaN: true }),
      bendsFilmed: fc.boolean(),
      most: fc.constantFrom(8, 10),
      isMeasured: fc.boolean(),
    })
    .map(({ mean, sem, bendsFilmed, most, isMeasured }): SetReading => ({
      state: 'read',
      hasVideo: false,
      isWaiting: false,
      result: {
        marks: [],
        inLine: isMeasured
          ? { chancesInLine: [0.2, 0.5, 0.9], low: 1, high: 3, mode: 2, expected: 1.6, distribution: [] }
          : null,
        mainReason: null,
        peak: isMeasured ? { meanDeg: mean, count: 3, semDeg: sem } : null,
      } as Extract<SetReading, { state: 'read' }>['result'],
      course: {
        points: [
          { number: 1, valueDeg: isMeasured ? mean : null, bandDeg: 4, isAtEdge: false, verdict: 'in' },
        ],
        limits: { 'knee-angle': { least: -10, most } },
        bendsFilmed,
        measuringVersion: 7,
      },
    })),
);

const session = fc.record({
  day: fc.integer({ min: 0, max: 60 }),
  before: score,
  during: score,
  after: score,
  effort: score,
  reading,
  side: fc.constantFrom('left' as const, 'right' as const),
  ended: fc.option(fc.constantFrom(...endReasons)),
  signs: fc.option(fc.subarray([...signIds], { maxLength: 2 })),
  isOpen: fc.boolean(),
});

const dayMs = 24 * 3_600_000;
const firstMs = Date.parse('2026-04-01T08:00:00.000Z');
const idOf = (number: number) => `00000000-0000-4000-8000-${String(number).padStart(12, '0')}`;

const anyCase: fc.Arbitrary<ReportCase> = fc
  .record({
    sessions: fc.array(session, { maxLength: 12 }),
    painfulSide: fc.option(fc.constantFrom(...painfulSides)),
    sites: fc.subarray([...painSites]),
    since: fc.option(fc.constant('2026-02-01')),
    goals: fc.constantFrom('', 'Dance at a wedding'),
    hasPlan: fc.boolean(),
  })
  .map(({ sessions, hasPlan, ...notes }) => {
    const plan = smallPlan();
    return {
      patient: { ...newPatient('Invented Heron 41', idOf(0), '2026-03-01T08:00:00.000Z'), ...notes },
      plans: hasPlan ? [plan] : [],
      nowMs: firstMs + 70 * dayMs,
      error: ownError([]),
      sessions: sessions.map((one, index): ListedSession => {
        const { day, before, during, after, effort, side, ended, signs, isOpen } = one;
        return listedSession({
          id: idOf(100 + index),
          startedAt: new Date(firstMs + day * dayMs).toISOString(),
          painBefore: before,
          painAfter: after,
          effort,
          isOpen,
          plan: { id: plan.id, madeAt: plan.createdAt },
          endedBecause: ended === null ? null : { reason: ended, fell: null },
          check: signs === null ? null : { asked: 'all', signs, takenBack: [] },
          sets: [
            listedRecording({
              line: {
                side,
                painDuring: during,
                sessionId: one.reading.state === 'read' ? idOf(1000 + index) : null,
              },
              reading: one.reading,
            }),
          ],
        });
      }),
    };
  });

describe('therapistReport(case) and patientReport(case)', () => {
  it('promise nothing and are whole, whatever was kept; injury is named in the closing line alone', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyCase, (reported) => {
        const report = therapistReport(reported);
        expect(report.length).toBeLessThanOrEqual(14);
        for (const [index, { head, text }] of report.entries()) {
          const line = `${head}: ${text}`;
          expect(line).not.toMatch(promises);
          expect(line).not.toMatch(broken);
          if (index < report.length - 1) expect(line).not.toMatch(/risk/i);
          if (/beyond error/.test(text)) compared++;
        }
        for (const { head, text } of patientReport(reported)) {
          expect(`${head}: ${text}`).not.toMatch(promises);
          expect(`${head}: ${text}`).not.toMatch(unfit);
          expect(`${head}: ${text}`).not.toMatch(/risk|°/);
        }
        expect(saidIn('es', spanish, () => reportText(patientReport(reported)))).not.toMatch(broken);
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(100);
  });

  it('leave out what nothing is known of', () => {
    const patient = newPatient('Invented Heron 41', idOf(0), '2026-03-01T08:00:00.000Z');
    const report = therapistReport({ patient, plans: [], sessions: [], nowMs: firstMs, error: ownError([]) });
    expect(reportText(report)).toBe(
      'Knee control programme, report of Wed 1 Apr 2026\n' +
        'Patient: Invented Heron 41 (pseudonym)\n' +
        'What it is not: No diagnosis, no load, no statement on the risk of injury or on going back to sport; not ' +
        'a certified medical device. What the treating professional says comes first.\n',
    );
  });
});
