import { describe, expect, it } from 'vitest';
import type { Finding } from '#features/sessions/rules/finding';
import { findingSentence, shortFinding } from '#features/sessions/rules/findingWords';

const findings: [Finding, short: string, sentence: RegExp][] = [
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
    { kind: 'out-of-line', repetitions: 3, ofMeasured: 7, ways: ['inward'], measures: [] },
    '3 of 7 out of line',
    /^In 3 of the 7 repetitions that were measured the knee went out of line, inward\.$/,
  ],
  [
    { kind: 'out-of-line', repetitions: 4, ofMeasured: 4, ways: ['inward', 'outward'], measures: [] },
    '4 of 4 out of line',
    /^In all 4 repetitions that were measured the knee went out of line, sometimes inward, sometimes outward\.$/,
  ],
  [
    { kind: 'out-of-line', repetitions: 2, ofMeasured: 6, ways: [], measures: ['trunk-lean', 'depth'] },
    '2 of 6 out of line',
    /^In 2 of the 6 repetitions that were measured something went beyond its limit: trunk lean, depth\.$/,
  ],
  [
    { kind: 'out-of-line', repetitions: 3, ofMeasured: 6, ways: ['outward'], measures: ['pelvic-drop'] },
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
