import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { comparisons } from '#tools/commands/tools/compare/comparisons';
import { runInProcess } from '../../../support/runInProcess';
import { conditionsOf } from '../../../support/setConditions';

const compare = (...words: string[]) => runInProcess(() => import('#tools/commands/compare'), words);

function file(content: unknown): string {
  const path = join(mkdtempSync(join(tmpdir(), 'overfoot-')), 'compared.json');
  writeFileSync(path, JSON.stringify(content));
  return path;
}

const set = (day: number, value: number, given = {}) => ({ day, value, conditions: conditionsOf(given) });
const leg = (deg: number) => ({ deg, yawSdDeg: 2, otherSdDeg: 2.249 });
const side = (given: 'left' | 'right') => conditionsOf({ side: given });
const repeats = [
  { first: 9.1, second: 10.4 },
  { first: 7.8, second: 6.9 },
  { first: 11.2, second: 8.7 },
  { first: 6.5, second: 8.0 },
  { first: 10.0, second: 9.2 },
];

/** Of every kind one file, and a figure or sentence that is worked out in the test of its rule. */
const compared: [content: { kind: string } & Record<string, unknown>, figures: object][] = [
  [
    { kind: 'change', earlier: [set(0, 13.2)], later: [set(21, 7.9)] },
    { kind: 'compared', change: { verdict: 'within-error', detectable: expect.closeTo(8.34, 2) } },
  ],
  [
    { kind: 'course', sets: [14, 13, 11, 12, 9, 8].map((value, week) => set(7 * week, value)) },
    { slope: { change: expect.closeTo(-5.86, 2) } },
  ],
  [
    { kind: 'pain', what: 'Worst pain of the day', earlier: [6, 7, 6], later: [3, 2, 3] },
    { size: 'beyond-error' },
  ],
  [
    {
      kind: 'sides',
      placing: 'own',
      conditions: { left: side('left'), right: side('right') },
      days: [{ left: leg(12), right: leg(5) }],
    },
    { difference: 7, bandDeg: expect.closeTo(8.34, 2), verdict: 'within-error' },
  ],
  [
    {
      kind: 'symmetry',
      unit: 'repetitions',
      involved: { side: 'right', value: 18, sem: 1.2 },
      other: { value: 24, sem: 1.2, before: false },
    },
    { pct: 75, toLine: 'below' },
  ],
  [{ kind: 'own-error', when: 'other-day', repeats }, { used: expect.closeTo(2.454, 3) }],
  [
    {
      kind: 'raters',
      table: [
        [8, 2, 0],
        [1, 5, 1],
        [0, 1, 2],
      ],
    },
    { kappa: expect.closeTo(0.592, 3) },
  ],
  [{ kind: 'methods', first: [1, 4, 6, 8], second: [2, 3, 7, 7] }, { meanDifference: 0 }],
  [
    {
      kind: 'icc',
      ratings: [
        [4, 4],
        [8, 8],
      ],
    },
    { agreement: 1 },
  ],
  [
    {
      kind: 'test',
      test: 'knee-to-wall',
      left: [8, 9, 10],
      right: [11],
      earlier: { left: [7], right: [], sameRater: true, sameProtocol: true },
    },
    { left: 10, right: 11, changes: [{ side: 'left', verdict: 'higher', difference: 3 }] },
  ],
  [
    {
      kind: 'step-down',
      seen: {
        armsUsed: true,
        trunkLeaned: false,
        pelvisLeftLevel: false,
        kneeInward: 'beyond-inner-border',
        unsteady: false,
      },
    },
    { points: 3, quality: 'medium' },
  ],
  [
    { kind: 'reach', legCm: 80, reachCm: { front: 60, backInward: 80, backOutward: 88 } },
    { compositePct: 95 },
  ],
  [{ kind: 'mini-squat', isInward: [true, true, true, false, null] }, { found: 'inward' }],
  [{ kind: 'effusion', earlier: 'trace', later: '2+' }, { swelling: 'much-more' }],
  [
    {
      kind: 'adherence',
      perWeek: 3,
      startDay: 0,
      today: 12,
      occasions: [{ day: 2, outcome: 'done' }],
    },
    { silentDays: 9, isSilent: true, sentences: expect.arrayContaining(['Silent for 9 days.']) },
  ],
];

describe('compare FILE.json', () => {
  it.each(compared)('%j', async (content, figures) => {
    const { code, stdout, stderr } = await compare(file(content));
    expect([code, stderr]).toEqual([0, '']);
    const printed = JSON.parse(stdout) as { sentences: string[] };
    expect(printed).toMatchObject(figures);
    expect(printed.sentences.length).toBeGreaterThan(0);
    expect(stdout).not.toMatch(/undefined|NaN|\[object/);
  });

  it('knows every kind that is tried here, and no other', () => {
    expect(compared.map(([{ kind }]) => kind)).toEqual(Object.keys(comparisons));
  });

  it("uses the practice's own error where there are repeats", async () => {
    const content = { kind: 'change', earlier: [set(0, 13.2)], later: [set(21, 7.9)], repeats };
    const { stdout } = await compare(file(content));
    expect(JSON.parse(stdout)).toMatchObject({ change: { detectable: expect.closeTo(6.8, 2) as number } });
  });

  it('prints no difference of sets that are unlike', async () => {
    const change = { kind: 'change', earlier: [set(0, 13.2)], later: [set(21, 7.9, { seatHeightCm: 50 })] };
    expect(JSON.parse((await compare(file(change))).stdout)).toMatchObject({
      kind: 'unlike',
      sentences: ['Not compared: seat 46 cm then, 50 cm now.'],
    });
    const sides = {
      kind: 'sides',
      placing: 'same',
      conditions: { left: { ...side('left'), support: 'hand' }, right: side('right') },
      days: [{ left: leg(12), right: leg(5) }],
    };
    const { stdout } = await compare(file(sides));
    expect(stdout).not.toContain('bandDeg');
    expect(JSON.parse(stdout)).toMatchObject({
      sentences: ['Not compared: support a hand left, none right.'],
    });
  });

  it('lists what each kind takes', async () => {
    const { code, stdout } = await compare('--kinds');
    expect(code).toBe(0);
    for (const kind of Object.keys(comparisons)) expect(stdout).toContain(`${kind}: `);
  });
});

const degrees = { kind: 'symmetry', unit: 'deg', involved: {}, other: {} };
const refused: [why: string, words: string[], sentence: RegExp][] = [
  ['no file', [], /^The file is missing\. Usage: npm run -s compare/],
  ['two files', ['a.json', 'b.json'], /^One file at a time/],
  ['a file that is not there', ['nowhere.json'], /^"nowhere.json" does not exist/],
  ['an option that is not known', ['--fast'], /^Unknown option '--fast'/],
  ['no kind', [file({})], /does not hold something to compare \(kind: /],
  ['a kind that is not known', [file({ kind: 'speed' })], /\(kind: Invalid option: .*"change"/],
  ['an angle in percent', [file(degrees)], /\(unit: only amounts have a percentage/],
  [
    'sets without conditions',
    [file({ kind: 'change', earlier: [{ day: 0, value: 3 }], later: [] })],
    /does not hold a comparison of the kind "change" \(earlier\.0\.conditions: /,
  ],
  [
    'a table that is not square',
    [file({ kind: 'raters', table: [[1, 2], [3]] })],
    /cannot be compared\. A table of ratings is square/,
  ],
  [
    'columns of unequal length',
    [file({ kind: 'methods', first: [1], second: [1, 2] })],
    /cannot be compared\. Pairs need as many values twice/,
  ],
  [
    'more than the test can give',
    [file({ kind: 'test', test: 'one-leg-rise', left: [51], right: [3] })],
    /cannot be compared\. A try is 0 or above, and 50 at most, got 51/,
  ],
];

describe('compare refuses in one line', () => {
  it.each(refused)('%s', async (_, words, sentence) => {
    const { code, stdout, stderr } = await compare(...words);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(sentence);
    expect([code, stdout]).toEqual([2, '']);
  });
});
