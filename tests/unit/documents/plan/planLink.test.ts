import { readFileSync } from 'node:fs';
import { inflateRawSync } from 'node:zlib';
import { sha256 } from '@noble/hashes/sha2.js';
import { base64urlnopad } from '@scure/base';
import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { isProblem } from '#core/problem';
import { carriesPlan } from '#documents/plan/carriesPlan';
import { parsePlan } from '#documents/plan/parsePlan';
import { longestFragment, planToFragment, readPlanLink } from '#documents/plan/planLink';
import { largestPlanBytes } from '#documents/plan/planRanges';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { smallHold, smallItem, smallPlan } from '../../../support/smallPlan';

const exampleText = readFileSync(`${projectRoot}fixtures/example.plan.json`, 'utf8');
/** As it is kept, of version 5. */
const exampleFile = JSON.parse(exampleText) as Record<string, unknown>;
const example = parsePlan(exampleText);

const keyOf = (letter: string) => `age1${letter.repeat(58)}`;

function problemOf(fragment: string): string | null {
  try {
    readPlanLink(fragment);
    return null;
  } catch (error) {
    if (isProblem(error, 'plan')) return error.message;
    throw error;
  }
}

/** A link whose check holds, around anything. */
function linkAround(packed: Uint8Array, version = '1'): string {
  const check = base64urlnopad.encode(sha256(packed).subarray(0, 6));
  return `plan=${version}.${base64urlnopad.encode(packed)}.${check}`;
}

describe('planToFragment(plan), readPlanLink(fragment)', () => {
  it.each([example, smallPlan()])('give back what was put in', (plan) => {
    const fragment = planToFragment(plan);
    expect(carriesPlan(`#${fragment}`)).toBe(true);
    expect(readPlanLink(fragment)).toEqual({ plan });
    expect(readPlanLink(`#${fragment}`)).toEqual({ plan });
  });

  it('write deflated JSON (RFC 1951) in letters that an address may hold (RFC 3986)', () => {
    const fragment = planToFragment(example);
    expect(fragment).toMatch(/^plan=1\.[\w-]+\.[\w-]{8}$/);
    const packed = Buffer.from(fragment.split('.')[1]!, 'base64url');
    expect(JSON.parse(inflateRawSync(packed).toString('utf8'))).toEqual({ ...exampleFile, version: 5 });
  });

  it('take no more room than before where a plan says nothing that is newer, and open in programs of then', () => {
    const { perWeek, videoWish, ...before } = exampleFile;
    const bytes = deflateSync(strToU8(JSON.stringify({ ...before, version: 4 })), { level: 9 });
    const open = { ...example, perWeek: null, videoWish: null };
    expect(planToFragment(open)).toBe(linkAround(bytes));
    expect(readPlanLink(planToFragment(open))).toEqual({ plan: open });
  });

  it('take no more room than before with one key, and open in programs of then', () => {
    const one = smallPlan({ autoStep: 'never', returnKeys: [keyOf('q')] });
    const before = JSON.stringify(one)
      .replace('"version":9', '"version":7')
      .replace(',"thresholds":{}', '')
      .replace(/"returnKeys":\["(\w+)"\]/, '"returnKey":"$1"');
    expect(before).toContain('"returnKey":"age1');
    expect(planToFragment(one)).toBe(linkAround(deflateSync(strToU8(before), { level: 9 })));
    expect(readPlanLink(planToFragment(one))).toEqual({ plan: one });
  });

  it.each([
    { returnKeys: [keyOf('q')] },
    { returnKeys: [keyOf('q'), keyOf('p')] },
    { returnKeys: [...'qpzry'].map(keyOf) },
    { perWeek: 3, videoWish: null },
    { perWeek: null, videoWish: 'none' as const },
    { language: 'es' as const },
    { thresholds: { sessions: 4 } },
    { thresholds: { sessions: 4, leastMeasuredShare: 0.5 }, returnKeys: [keyOf('q'), keyOf('p')] },
    { autoStep: 'within-plan' as const },
    { freeItems: [{ name: 'Walking', how: '', dose: '20 minutes' }] },
    { items: [smallItem({ stage: 'seat-46' })] },
    { items: [smallItem({ sidesInTurn: true })] },
    { items: [smallHold({ support: 'none' })] },
  ])('carry %j', (said) => {
    const plan = smallPlan(said);
    expect(readPlanLink(planToFragment(plan))).toEqual({ plan });
  });

  it('take no more room than before with several keys and the usual thresholds', () => {
    const two = smallPlan({ returnKeys: [keyOf('q'), keyOf('p')] });
    const before = JSON.stringify(two).replace('"version":9', '"version":8').replace(',"thresholds":{}', '');
    expect(before).not.toContain('thresholds');
    expect(planToFragment(two)).toBe(linkAround(deflateSync(strToU8(before), { level: 9 })));
  });

  it('take little more room for thresholds of one patient', () => {
    const own = { sessions: 4, mostEffort: 7, addedRepetitions: 1 };
    const added = planToFragment({ ...example, thresholds: own }).length - planToFragment(example).length;
    expect(added).toBeLessThan(200);
  });

  it('stay short enough for a code that a phone reads', () => {
    // 2953 bytes is what the largest QR code holds at its lowest correction (ISO/IEC 18004, table 7; from memory).
    expect(planToFragment(example).length).toBeLessThan(1500);
  });

  it('say of any link with a letter changed or cut that it is not whole', () => {
    const fragment = planToFragment(example);
    const letters = [...'ABCxyz019-_'];
    fc.assert(
      fc.property(
        fc.integer({ min: 7, max: fragment.length - 1 }),
        fc.constantFrom(...letters),
        (at, letter) => {
          fc.pre(fragment[at] !== letter);
          const changed = `${fragment.slice(0, at)}${letter}${fragment.slice(at + 1)}`;
          expect(problemOf(changed)).toMatch(
            /^This link is not whole: .* Ask for the link or the plan file again\.$/,
          );
          expect(problemOf(fragment.slice(0, at))).toMatch(/not whole/);
        },
      ),
    );
  });

  it('refuse what is no plan link, is from a later version, or is far too long', () => {
    for (const text of ['', '#', 'plan', 'plan=', 'plan=x.y.z', 'session=1.a.b'])
      expect(problemOf(text)).toMatch(/contains no plan/);
    expect(problemOf(linkAround(Uint8Array.of(1), '3'))).toMatch(/of version 3; .* Update the program\.$/);
    expect(problemOf(`plan=1.${'A'.repeat(longestFragment)}.AAAAAAAA`)).toMatch(/too long/);
  });

  it('refuse a plan of a later version, of another patient format, or with a remark of 10 MB', () => {
    const around = (data: unknown) => linkAround(deflateSync(strToU8(JSON.stringify(data)), { level: 9 }));
    expect(problemOf(around({ ...example, version: 10 }))).toMatch(/This plan is of version 10/);
    expect(problemOf(around({ format: 'overfoot-session' }))).toMatch(/not a plan/);
    expect(problemOf(around({ ...example, words: 'x'.repeat(10_000_000) }))).toMatch(/too large for a plan/);
  });

  it('never unpack more than a plan may hold', () => {
    const bomb = deflateSync(new Uint8Array(20_000_000), { level: 9 });
    expect(bomb.length).toBeLessThan((longestFragment * 3) / 4);
    expect(bomb.length * 100).toBeGreaterThan(largestPlanBytes);
    expect(problemOf(linkAround(bomb))).toMatch(/too large for a plan/);
  });

  it('end in a sentence whatever is packed', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (packed) => {
        expect(problemOf(linkAround(packed))).toMatch(/^(This|What) .*\.$/s);
      }),
    );
    expect(problemOf(linkAround(deflateSync(strToU8('{"__proto__":{"format":"overfoot-plan"}}'))))).toMatch(
      /not a plan/,
    );
  });
});
