import { describe, expect, it } from 'vitest';
import type { Restriction } from '#documents/patient/caseEntries';
import type { PlanItem } from '#documents/plan/planDocument';
import { findRefusals, restrictionsInForce, uncheckedSentence } from '#features/planning/rules/refusals';
import { smallHold, smallItem } from '../../../../support/smallPlan';

const set = {
  ...{ id: 'r', at: '2026-03-01T08:00:00.000Z', by: 'AB', withdrawn: null },
  ...{ side: 'left' as const, setBy: 'surgeon', until: null },
};
const bend: Restriction = { ...set, kind: 'bend', mostDeg: 60 };
const partial: Restriction = { ...set, kind: 'weight-bearing', bearing: 'partial' };
const none: Restriction = { ...set, kind: 'weight-bearing', bearing: 'none' };
const load: Restriction = { ...set, kind: 'load' };
const openChain: Restriction = { ...set, kind: 'open-chain' };
const tube = { kind: 'tube', level: 'light', where: 'ankle' } as const;
const squat = (change = {}) => smallItem({ task: 'single-leg-squat', sides: ['left'], ...change });
const split = (change = {}) => smallItem({ sides: ['right'], ...change });
const today = '2026-03-10';
const refused = (item: PlanItem, restriction: Restriction) =>
  findRefusals([item], [restriction], [], today).map(({ sentence }) => sentence);

describe('findRefusals(items, restrictions, overrides, today)', () => {
  it.each<[string, PlanItem, Restriction, RegExp | null]>([
    [
      'deeper than allowed',
      squat({ bendDeg: 75 }),
      bend,
      /bends the left knee to about 75°\. Surgeon: .* 60° at most, until further/,
    ],
    ['as deep as allowed', squat({ bendDeg: 60 }), bend, null],
    ['as deep as its stage says', squat({ stage: 'bend-75' }), bend, /about 75°/],
    ['of an unknown depth', squat(), bend, /says nothing of how far the left knee bends/],
    ['the other leg alone', squat({ sides: ['right'], bendDeg: 75 }), bend, null],
    ['both knees, whichever works', split({ bendDeg: 90 }), bend, /bends the left knee to about 90°/],
    ['nothing bends', smallHold(), bend, null],
    ['all weight on the leg', squat(), partial, /the whole weight of the body on the left leg/],
    ['a part of the weight', split(), partial, null],
    ['a stage on one leg', split({ sides: ['left'], stage: 'lower-on-one' }), partial, /the whole weight/],
    ['a part where none is allowed', split(), none, /puts weight on the left leg/],
    ['the other leg bears it', squat({ sides: ['right'] }), none, null],
    ['lying', smallHold(), none, null],
    [
      'standing on it while the other presses',
      smallHold({ sides: ['right'], stage: 'standing-30' }),
      none,
      /whole weight/,
    ],
    ['a load', squat({ load: tube }), load, /loads the left leg/],
    ['no load', squat({ load: { kind: 'none' } }), load, null],
    ['a load on the other leg', squat({ sides: ['right'], load: tube }), load, null],
    ['nothing of the library is open-chain', squat({ load: tube }), openChain, null],
    ['no side is chosen yet', squat({ sides: [] }), partial, null],
  ])('%s', (_case, item, restriction, sentence) => {
    const found = refused(item, restriction);
    if (sentence === null) expect(found).toEqual([]);
    else expect(found).toEqual([expect.stringMatching(sentence)]);
  });

  it('counts a signature for what was shown, and no restriction that is over or taken out', () => {
    const [refusal] = findRefusals([squat()], [partial], [], today);
    const signed = {
      ...{ id: 'o', at: set.at, by: 'CD', why: 'Agreed.', restriction: 'r' },
      ...{ task: 'single-leg-squat' as const, refusal: refusal!.sentence },
    };
    expect(findRefusals([squat()], [partial], [signed], today)).toEqual([]);
    expect(findRefusals([squat()], [partial], [{ ...signed, restriction: 'other' }], today)).toHaveLength(1);
    expect(findRefusals([squat()], [none], [signed], today)).toHaveLength(1);
    const over = { ...partial, until: '2026-03-09' };
    const withdrawn = { ...partial, withdrawn: { at: set.at, by: 'AB' } };
    expect(restrictionsInForce([over, withdrawn, { ...partial, until: today }], today)).toHaveLength(1);
  });
});

describe('uncheckedSentence(freeItems, restrictions)', () => {
  it('names what no rule can check', () => {
    const free = { name: 'Leg extension', how: '', dose: '' };
    expect(uncheckedSentence([free], [openChain])).toMatch(
      /not held against the restrictions: “Leg extension”/,
    );
    expect([uncheckedSentence([], [openChain]), uncheckedSentence([free], [])]).toEqual([null, null]);
  });
});
