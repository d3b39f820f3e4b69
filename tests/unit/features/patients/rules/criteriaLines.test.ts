import { describe, expect, it } from 'vitest';
import { ownError } from '#core/reliability/ownError';
import { newPatient } from '#documents/patient/newPatient';
import type { AssessmentRecord, PatientDocument } from '#documents/patient/patientDocument';
import { buildCourse } from '#features/patients/rules/buildCourse';
import { trackChanges } from '#features/patients/rules/changes';
import { criteriaLines, criterionSentence } from '#features/patients/rules/criteriaLines';
import { handEntries, handMeasureLabel, handValueLack } from '#features/patients/rules/handValues';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { asked, measured, session } from '../../../../support/measuredSession';

const at = '2026-04-03T08:00:00.000Z';
const nowMs = Date.parse('2026-04-20T08:00:00.000Z');
const kept = (id: string) => ({ id, at, by: 'AB', withdrawn: null });
const of = (change: Partial<PatientDocument>): PatientDocument => ({
  ...newPatient('Blue Heron 7', 'p', '2026-01-01T00:00:00.000Z'),
  surgery: { what: 'invented operation', side: 'left', on: '2026-01-12' },
  ...change,
});
const done = (test: AssessmentRecord['test'], left: number[], right: number[]): AssessmentRecord => ({
  ...kept(test),
  ...{ test, asDone: '', tries: { left, right }, worstPain: null, remark: '' },
});
const line = (patient: PatientDocument, id: string, card: 'running' | 'sport' = 'running') =>
  criteriaLines(card, patient, nowMs).find(({ criterion }) => criterion.id === id)!;

describe('criteriaLines(card, patient, nowMs)', () => {
  it('has nothing measured but the time, in the beginning', () => {
    const states = criteriaLines('running', of({}), nowMs).map(({ state }) => state);
    // 98 days are 14 weeks.
    expect(states).toEqual(['met', ...Array<string>(states.length - 1).fill('not-measured')]);
    expect(criterionSentence(line(of({}), 'weeks'))).toBe(
      '14 weeks since Monday 12 January 2026. Line: 12 or more.',
    );
    expect(line(of({}), 'weeks', 'sport').state).toBe('not-met');
    expect(line(of({ surgery: null }), 'weeks').state).toBe('not-measured');
  });

  it('takes symmetry from the operated leg, whichever hurts, and says that its error is not known', () => {
    const patient = of({ painfulSide: 'right', assessments: [done('single-hop', [85], [100])] });
    expect(line(patient, 'single-hop').state).toBe('met');
    expect(line(patient, 'single-hop', 'sport').state).toBe('not-met');
    expect(criterionSentence(line(patient, 'single-hop'))).toBe(
      '85 % (Friday 3 April 2026, AB). Line: 70 or more. How far error reaches is not known.',
    );
  });

  it('takes what was measured last, by test or by hand, and nothing that was taken out', () => {
    const byHand = { ...kept('h'), on: '2026-04-10', measure: 'quadriceps-pct' as const, value: 92 };
    const assessments = [done('strength', [2], [4])];
    expect(line(of({ assessments }), 'quadriceps')).toMatchObject({
      state: 'not-met',
      measured: { value: 50 },
    });
    expect(line(of({ assessments, criteria: [byHand] }), 'quadriceps').measured?.value).toBe(92);
    const withdrawn = { ...byHand, withdrawn: { at, by: 'AB' } };
    expect(line(of({ assessments, criteria: [withdrawn] }), 'quadriceps').measured?.value).toBe(50);
    const earlier = { ...byHand, on: '2026-04-01' };
    expect(line(of({ assessments, criteria: [earlier] }), 'quadriceps').measured?.value).toBe(50);
  });

  it('keeps a grade or points at the line within their error', () => {
    const grade = (value: number) => line(of({ assessments: [done('effusion', [value], [])] }), 'effusion');
    expect([0, 1, 2].map((value) => grade(value).state)).toEqual(['met', 'within-error', 'not-met']);
    expect(criterionSentence(grade(1))).toBe('trace (Friday 3 April 2026, AB). Line: none or a trace.');
  });

  it('wants both legs for the weaker one', () => {
    const rise = (left: number[], right: number[]) =>
      line(of({ assessments: [done('one-leg-rise', left, right)] }), 'rise', 'sport');
    expect(rise([22], []).state).toBe('not-measured');
    expect(rise([22], [20])).toMatchObject({ state: 'not-met', measured: { value: 20 } });
    expect(rise([22], [21]).state).toBe('met');
  });

  describe('control in tests', () => {
    const test = { ...asked!, isTest: true };
    const tests = (degs: number[], change = test) =>
      degs.map((deg, i) =>
        session(`2026-05-0${i + 1}`, [
          measured({ side: 'left', peaks: [deg - 1, deg, deg + 1], asked: change }),
        ]),
      );
    const control = (sessions: ListedSession[], patient = of({})) =>
      criteriaLines('sport', patient, nowMs, trackChanges(buildCourse(sessions, []), ownError([]))).find(
        ({ criterion }) => criterion.id === 'control',
      )!;

    it('holds the mean of the last days against the limit, with its error', () => {
      // The usual limit is 10. One day is off by 1.96 x 3.01 = 5.9 (Munro 2012), three by 3.4.
      expect(control(tests([4])).state).toBe('met');
      expect(control(tests([5])).state).toBe('within-error');
      expect(control(tests([16])).state).toBe('not-met');
      // Six days: the last three count, 6, 6 and 6.
      expect(control(tests([15, 15, 15, 6, 6, 6]))).toMatchObject({ state: 'met', measured: { value: -4 } });
      expect(criterionSentence(control(tests([15, 15, 15, 6, 6, 6])))).toMatch(
        /^Lateral step-down: 6°, give or take 3.4°, limit 10° \(3 days, last on .*\)\. Line: /,
      );
    });

    it('is not measured without tests, of the other leg, or where no leg is the one', () => {
      expect(control([]).state).toBe('not-measured');
      expect(control(tests([4], { ...test, isTest: false })).state).toBe('not-measured');
      const right = of({ surgery: { what: 'invented', side: 'right', on: '2026-01-12' } });
      expect(control(tests([4]), right).state).toBe('not-measured');
    });
  });

  it('holds the worst pain of the last questionnaire against its line', () => {
    const answered = (value: number) => ({
      ...kept('q'),
      ...{ on: '2026-04-10', of: 'numeric-pain', version: null, title: 'Pain', score: null },
      answers: [{ linkId: 'worst', question: 'Worst?', answers: [{ kind: 'whole' as const, value }] }],
    });
    const state = (value: number) => line(of({ questionnaires: [answered(value)] }), 'pain').state;
    // One value is off by 1.33 / √2 = 0.94 at most.
    expect([0, 1, 2].map(state)).toEqual(['met', 'within-error', 'not-met']);
  });
});

describe('handValueLack(measure, text, on, today)', () => {
  it.each([
    ['bend-pct', '', '2026-04-01', /Write the value in percent, from 0 to 150/],
    ['bend-pct', '151', '2026-04-01', /from 0 to 150/],
    ['extension-loss', '-21', '2026-04-01', /from −20 to 90/],
    ['bend-pct', '96,5', '', /Choose the day/],
    ['bend-pct', '96,5', '2026-04-21', /in the future/],
    ['extension-loss', '-2', '2026-04-20', null],
  ] as const)('%s %s %s', (measure, text, on, sentence) => {
    const found = handValueLack(measure, text, on, '2026-04-20');
    if (sentence === null) expect(found).toBeNull();
    else expect(found).toMatch(sentence);
  });

  it('names unit and range, and lists what was entered', () => {
    expect(handMeasureLabel('extension-loss')).toBe('Value, degrees, −20 to 90');
    const entry = { ...kept('h'), on: '2026-04-10', measure: 'bend-pct' as const, value: 96 };
    expect(handEntries([entry, { ...entry, withdrawn: { at, by: 'AB' } }])).toEqual([
      { id: 'h', words: 'Bending, of the other knee: 96 percent, Friday 10 April 2026, AB.' },
    ]);
  });
});
