import { describe, expect, it } from 'vitest';
import type { Finding } from '#features/sessions/rules/finding';
import { findingSentence, shortFinding } from '#features/sessions/rules/findingWords';

const findings: [Finding, short: string, sentence: RegExp][] = [
  [
    { kind: 'signs', signs: ['calf', 'gave-way'] },
    'sign: calf, gave way',
    /^Before the exercises, said: ‘One calf is newly .*\.’ ‘The knee gave way\.’ Nothing was done; the advice was: Do not/,
  ],
  [
    { kind: 'stopped', reason: 'gave-way', fell: true, hasBegun: true },
    'stopped: knee gave way, fell',
    /^Stopped because the knee gave way\. They fell\.$/,
  ],
  [
    { kind: 'stopped', reason: 'pain', fell: null, hasBegun: false },
    'not begun: pain',
    /^Did not begin, because of pain\.$/,
  ],
  [
    { kind: 'went-on', score: 5, limit: 3, times: 1 },
    'went on at 5, limit 3',
    /^Went on with pain of 5, above the limit of 3, saying that you had agreed\.$/,
  ],
  [
    { kind: 'went-on', score: 5, limit: 3, times: 2 },
    'went on at 5, limit 3',
    /^Went on 2 times with pain of 5,/,
  ],
  [
    { kind: 'taken-back', signs: ['wound'] },
    'sign taken back',
    /^Chose, and then took back as a mistake: ‘A wound on the leg .*\.’$/,
  ],
  [
    { kind: 'says-cleared', who: 'a doctor' },
    'says it was cleared',
    /^Before this session, the patient said .* cleared by: a doctor\.$/,
  ],
  [
    { kind: 'settled', by: 'therapist', who: 'AB', at: '2026-04-05T12:00:00.000Z' },
    'settled: AB',
    /^Settled on Sun 5 Apr 2026 by AB\.$/,
  ],
  [
    { kind: 'settled', by: 'professional', who: 'a doctor', at: '2026-04-05T12:00:00.000Z' },
    'settled: a doctor',
    /^On Sun 5 Apr 2026 the patient said .* cleared by: a doctor\.$/,
  ],
  [
    { kind: 'pain-above-limit', score: 6, limit: 3, when: 'during' },
    'pain 6, limit 3',
    /^Pain reached 6 of 10 during a set; the limit was 3\.$/,
  ],
  [
    { kind: 'pain-risen', from: 0, to: 2, when: 'after' },
    'pain rose 0 to 2',
    /^Pain rose from 0 before the exercises to 2 after the exercises\.$/,
  ],
  [
    { kind: 'cut-short', sets: 1, firstReason: 'The doorbell rang' },
    'a set cut short',
    /^A set was cut short: The doorbell rang\.$/,
  ],
  [
    { kind: 'cut-short', sets: 2, firstReason: 'Cramp!' },
    '2 sets cut short',
    /^2 sets were cut short; the first one: Cramp!$/,
  ],
  [
    { kind: 'side-doubtful', sets: 1 },
    'other leg in a set?',
    /^In one set it looks as if the other leg worked\. Open it to check the side\.$/,
  ],
  [
    { kind: 'side-doubtful', sets: 2 },
    'other leg in 2 sets?',
    /^In 2 sets it looks as if the other leg worked\. Open them to check the side\.$/,
  ],
  [
    { kind: 'out-of-line', repetitions: 3, probable: 0, ofMeasured: 7, ways: ['inward'], measures: [] },
    '3 of 7 out of line',
    /^In 3 of the 7 repetitions that were measured the knee went out of line, inward\.$/,
  ],
  [
    { kind: 'out-of-line', repetitions: 3, probable: 2, ofMeasured: 7, ways: ['inward'], measures: [] },
    '3 of 7 out of line',
    /^In 3 of the 7 .* went out of line, inward; in 2 of them only probably\.$/,
  ],
  [
    { kind: 'out-of-line', repetitions: 1, probable: 1, ofMeasured: 7, ways: ['inward'], measures: [] },
    '1 of 7 out of line',
    /^In 1 of the 7 .* went out of line, inward; only probably\.$/,
  ],
  [
    {
      kind: 'out-of-line',
      repetitions: 4,
      probable: 0,
      ofMeasured: 4,
      ways: ['inward', 'outward'],
      measures: [],
    },
    '4 of 4 out of line',
    /^In all 4 repetitions that were measured the knee went out of line, sometimes inward, sometimes outward\.$/,
  ],
  [
    {
      kind: 'out-of-line',
      repetitions: 2,
      probable: 0,
      ofMeasured: 6,
      ways: [],
      measures: ['trunk-lean', 'depth'],
    },
    '2 of 6 out of line',
    /^In 2 of the 6 repetitions that were measured something went beyond its limit: trunk lean, depth\.$/,
  ],
  [
    {
      kind: 'out-of-line',
      repetitions: 3,
      probable: 0,
      ofMeasured: 6,
      ways: ['outward'],
      measures: ['pelvic-drop'],
    },
    '3 of 6 out of line',
    /^In 3 of the 6 .* the knee went out of line, outward, or something went beyond its limit: pelvic drop\.$/,
  ],
  [
    { kind: 'not-measured', repetitions: 1, of: 1, reason: 'view-turned' },
    '1 of 1 not measured',
    /^1 of 1 repetition could not be measured: turned too far from the camera\. Next time: Turn /,
  ],
  [
    { kind: 'nothing-found', sets: 1 },
    'no repetition found',
    /^No complete repetition was found in one recorded set\. Open it/,
  ],
  [{ kind: 'unreadable', sets: 2 }, '2 sets can’t be read', /^The recordings of 2 sets can’t be read/],
  [{ kind: 'sets-missing', done: 1, of: 4 }, '1 of 4 sets done', /^1 of the plan’s 4 sets were done\.$/],
  [{ kind: 'unfilmed' }, 'not filmed', /^Not filmed: the sets were done, as the patient says\.$/],
  [
    { kind: 'silent', reason: 'hurts', days: 9 },
    '9 days without: it hurts',
    /^Nothing was kept for 9 days\. Asked why, the patient said: it hurts\. Ask how much, and where\.$/,
  ],
  [{ kind: 'waiting', sets: 1 }, 'not yet measured carefully', /^A set is not yet .* may still change\.$/],
];

describe('shortFinding(finding), findingSentence(finding)', () => {
  for (const [finding, short, sentence] of findings) {
    it(`says "${short}"`, () => {
      expect(shortFinding(finding)).toBe(short);
      expect(findingSentence(finding)).toMatch(sentence);
    });
  }
});
