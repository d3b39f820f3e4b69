import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runInProcess } from '../../../support/runInProcess';

const setVerdict = (...words: string[]) => runInProcess(() => import('#tools/commands/setVerdict'), words);

function file(content: unknown): string {
  const path = join(mkdtempSync(join(tmpdir(), 'overfoot-')), 'set.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

const example = {
  repetitions: [3.47, 5.65, 14.06, 4.52, 8.92, 17.3].map((inwardDeg) => ({ inwardDeg })),
  limits: { inwardDeg: 10 },
  sharedSdDeg: 2.9,
  ownSdDeg: Array<number>(6).fill(1.2),
};
const one = {
  repetitions: [{ inwardDeg: 2, outwardDeg: -12 }],
  limits: { inwardDeg: 10, outwardDeg: 10 },
  sharedSdDeg: 0,
  ownSdDeg: [2],
};

async function told(set: unknown): Promise<Record<string, unknown>> {
  const { code, stdout, stderr } = await setVerdict(file(set));
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout) as Record<string, unknown>;
}

describe('set-verdict FILE.json', () => {
  it('prints how many of the built-in example were in line', async () => {
    const { expected, chancesInLine, ...rest } = await told(example);
    expect(rest).toEqual({ low: 2, high: 5, mode: 4 });
    expect(expected).toBeCloseTo(3.6, 2);
    // Phi of (10 - peak) / sqrt(2.9^2 + 1.2^2) = 3.138.
    const expectedChances = [0.981, 0.917, 0.098, 0.96, 0.635, 0.01];
    expectedChances.forEach((chance, i) => expect((chancesInLine as number[])[i]).toBeCloseTo(chance, 3));
  });

  it('takes outward as negative in a repetition, and in a limit as a distance', async () => {
    // Phi((-12 + 10) / 2) Phi((10 - 2) / 2) = .158655 .999968.
    const { chancesInLine } = await told(one);
    expect((chancesInLine as number[])[0]).toBeCloseTo(0.15865, 5);
    expect(await told({ ...one, limits: { inwardDeg: 10, outwardDeg: -10 } })).toEqual(await told(one));
  });

  it('holds nothing outward against a set without that limit, or a repetition without that angle', async () => {
    const inwardAlone = { ...one, repetitions: [{ inwardDeg: 2 }] };
    expect(await told(inwardAlone)).toEqual(await told({ ...one, limits: { inwardDeg: 10 } }));
  });

  it('has an answer for errors and limits of any size', async () => {
    const huge = { ...one, limits: { inwardDeg: 1e300 }, sharedSdDeg: 1e300, ownSdDeg: [1e300] };
    const { chancesInLine } = await told(huge);
    // The limit is as far away as either error is large: Phi(1 / sqrt(2)) = .7602.
    expect((chancesInLine as number[])[0]).toBeCloseTo(0.7602, 4);
  });
});

const place = (where: string) => new RegExp(`does not hold a set of repetitions \\(${where}: `);

const refused: [why: string, content: unknown, sentence: RegExp][] = [
  ['text', 'in line', /is not JSON/],
  ['nothing', '', /is not JSON/],
  ['a list', [], /does not hold a set of repetitions \(Invalid input: expected object/],
  ['no repetitions', { ...example, repetitions: [], ownSdDeg: [] }, place('repetitions')],
  ['repetitions that are numbers', { ...example, repetitions: [3, 4] }, place('repetitions.0')],
  ['an angle in words', { ...one, repetitions: [{ inwardDeg: '2' }] }, place('repetitions.0.inwardDeg')],
  ['no inward angle', { ...one, repetitions: [{ outwardDeg: 2 }] }, place('repetitions.0.inwardDeg')],
  ['an angle that is null', { ...one, repetitions: [{ inwardDeg: null }] }, place('repetitions.0.inwardDeg')],
  [
    'an angle without end',
    JSON.stringify(one).replace('"inwardDeg":2', '"inwardDeg":1e999'),
    place('repetitions.0.inwardDeg'),
  ],
  ['an angle of two turns', { ...one, repetitions: [{ inwardDeg: 720 }] }, place('repetitions.0.inwardDeg')],
  [
    'more outward than inward',
    { ...one, repetitions: [{ inwardDeg: 2, outwardDeg: 12 }] },
    place('repetitions.0.outwardDeg'),
  ],
  ['no limits', { ...example, limits: undefined }, place('limits')],
  ['no inward limit', { ...example, limits: { outwardDeg: 10 } }, place('limits.inwardDeg')],
  ['no shared error', { ...example, sharedSdDeg: undefined }, place('sharedSdDeg')],
  ['a shared error below 0', { ...example, sharedSdDeg: -1 }, place('sharedSdDeg')],
  ['an own error below 0', { ...one, ownSdDeg: [-0.1] }, place('ownSdDeg.0')],
  ['one own error for all', { ...example, ownSdDeg: 1.2 }, place('ownSdDeg')],
  ['too few own errors', { ...example, ownSdDeg: [1, 2] }, place('ownSdDeg')],
];

describe('set-verdict refuses in one line', () => {
  it.each(refused)('%s', async (_, content, sentence) => {
    const { code, stdout, stderr } = await setVerdict(file(content));
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(sentence);
    expect([code, stdout]).toEqual([2, '']);
  });

  it.each([
    [[], /^The file is missing\. Usage: npm run -s set-verdict/],
    [['nowhere.json'], /^"nowhere.json" does not exist/],
    [['src'], /^"src" is not a file/],
    [['a.json', 'b.json'], /^One file at a time/],
    [['--sure', '80'], /^Unknown option '--sure'/],
  ])('%j', async (words, sentence) => {
    const { code, stdout, stderr } = await setVerdict(...words);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(sentence);
    expect([code, stdout]).toEqual([2, '']);
  });
});
