import { describe, expect, it } from 'vitest';
import { eyesTwice, practiceEyes } from '#features/patients/rules/practiceEyes';
import { measured, session } from '../../../../support/measuredSession';

const one = measured({ peaks: [3, 14, 6] });
const other = measured({ peaks: [2, 5] });
const sessions = [session('2026-04-01', [one]), session('2026-04-08', [other])];
const record = (
  set: typeof one,
  verdicts: ('in' | 'out')[],
  { by = 'ab', at = '2026-04-09T08:00:00.000Z' } = {},
) => ({
  by,
  at,
  recordingId: set.line.sessionId!,
  answers: verdicts.map((verdict, repetition) => ({ repetition, verdict })),
});

describe('practiceEyes(records, sessions)', () => {
  it('puts each judgement next to what was measured of the same repetition', () => {
    const skipped = record(one, ['in', 'out', 'out']);
    skipped.answers.splice(1, 1);
    expect(practiceEyes([skipped, record(other, ['out'], { by: 'cd' })], sessions)).toEqual([
      { by: 'ab', eye: 'in', measured: 'in' },
      { by: 'ab', eye: 'out', measured: 'in' },
      { by: 'cd', eye: 'out', measured: 'in' },
    ]);
  });

  it('counts the first judgement of a set of each therapist alone', () => {
    const later = record(one, ['in', 'in', 'in'], { at: '2026-04-20T08:00:00.000Z' });
    const found = practiceEyes([later, record(one, ['out', 'out', 'out']), { ...later, by: 'cd' }], sessions);
    expect(found.map(({ by, eye }) => `${by} ${eye}`)).toEqual([
      ...Array<string>(3).fill('ab out'),
      ...Array<string>(3).fill('cd in'),
    ]);
  });

  it('leaves out what is no longer there', () => {
    expect(practiceEyes([record(measured(), ['in'])], sessions)).toEqual([]);
    expect(practiceEyes([record(other, ['in', 'in', 'out'])], sessions)).toHaveLength(2);
  });
});

describe('eyesTwice(records)', () => {
  const first = record(one, ['in', 'out', 'out'], { at: '2026-04-09T08:00:00.000Z' });
  const again = (day: string, change = {}) => ({
    ...record(one, ['in', 'in', 'out'], { at: `2026-04-${day}T08:00:00.000Z` }),
    ...change,
  });

  it('holds the first time of a week later or more against the first, by the place in the recording', () => {
    // Shown in another order, and the second one skipped.
    const { answers } = again('16');
    const shuffled = again('16', { answers: [answers[2]!, answers[0]!] });
    expect(eyesTwice([again('20'), shuffled, first])).toEqual([
      { by: 'ab', first: 'out', second: 'out' },
      { by: 'ab', first: 'in', second: 'in' },
    ]);
    expect(eyesTwice([first, again('12'), again('17')])).toHaveLength(3);
  });

  it('finds none within a week, of another therapist, or of another set', () => {
    expect(eyesTwice([first, again('15')])).toEqual([]);
    expect(eyesTwice([first, again('16', { by: 'cd' })])).toEqual([]);
    expect(eyesTwice([first, again('16', { recordingId: other.line.sessionId! })])).toEqual([]);
  });
});
