import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mapMeasures } from '#core/measures/measures';
import { isProblem } from '#core/problem';
import { thresholdFacts, thresholdIds } from '#core/programme/proposalThresholds';
import { defaultLimits, limitedMeasures } from '#core/protocol/limits';
import { withoutProgress } from '#documents/plan/itemProgress';
import { parsePlan } from '#documents/plan/parsePlan';
import {
  planSchema,
  type HoldItem,
  type PlanDocument,
  type RepetitionItem,
} from '#documents/plan/planDocument';
import { largestPlanBytes, planBounds } from '#documents/plan/planRanges';
import { longestLevel } from '#documents/schema/loadSchema';
import { anyLimits } from '../../../support/anyLimits';
import { smallHold, smallItem, smallPlan } from '../../../support/smallPlan';

function problemOf(text: string): string | null {
  try {
    parsePlan(text);
    return null;
  } catch (error) {
    if (isProblem(error, 'plan')) return error.message;
    throw error;
  }
}

/** What is said of the small plan with something done to it. */
function problemAfter(change: (plan: PlanDocument) => unknown): string | null {
  const plan = smallPlan();
  change(plan);
  return problemOf(JSON.stringify(plan));
}

const keyOf = (letter: string) => `age1${letter.repeat(58)}`;
const first = (plan: PlanDocument) => plan.items[0] as RepetitionItem;
const second = (plan: PlanDocument) => plan.items[1] as HoldItem;
const sentences = /^This .*\. (Choose|Ask|Update) [^.]*\.$/s;

/** Every limit there is, each with many digits. */
const allLimits = {
  ...defaultLimits,
  ...mapMeasures(() => ({ least: -0.1000001, most: 0.1000001 })),
  'knee-angle': { least: -5.000001, most: 5.000001 },
  'pelvic-drop': { least: -5.000001, most: 5.000001 },
  'trunk-lean': { least: -5.000001, most: 5.000001 },
  'pelvis-place': { least: 0.5000001, most: 1.000001 },
  depth: { least: 0.1000001, most: 0.3000001 },
};

/** The small plan with its first item's limits as older versions wrote them. */
function older(kneeInwardDeg: number, kneeOutwardDeg: number, more: object = {}): object {
  const before = ofVersion3();
  const [item, ...items] = before.items;
  return { ...before, items: [{ ...item, limits: { kneeInwardDeg, kneeOutwardDeg, ...more } }, ...items] };
}

/** What an older plan says becomes this. */
function migrated(change: Partial<PlanDocument> = {}): PlanDocument {
  return smallPlan({ ifItGivesWay: '', ...change });
}

/** Without what version 9 added. */
function ofVersion8(change: Partial<PlanDocument> = {}) {
  const { thresholds, ...before } = smallPlan(change);
  return { ...before, version: 8 };
}

/** With one key, as version 7 had it. */
function ofVersion7(change: Partial<PlanDocument> = {}) {
  const { returnKeys, ...before } = ofVersion8(change);
  return { ...before, returnKey: returnKeys[0] ?? null, version: 7 };
}

/** Without what version 7 added. */
function ofVersion6(change: Partial<PlanDocument> = {}) {
  const { freeItems, autoStep, ...before } = ofVersion7(change);
  const added = Object.keys(withoutProgress);
  const items = before.items.map(
    (item) => Object.fromEntries(Object.entries(item).filter(([field]) => !added.includes(field))) as object,
  );
  return { ...before, items, version: 6 };
}

/** Without what version 6 added, either. */
function ofVersion5(change: Partial<PlanDocument> = {}) {
  const { language, ...before } = ofVersion6(change);
  return { ...before, version: 5 };
}

/** Without what version 5 added, either. */
function ofVersion4(change: Partial<PlanDocument> = {}) {
  const { perWeek, videoWish, ...before } = ofVersion5(change);
  return { ...before, version: 4 };
}

/** Without what version 4 added, either. */
function ofVersion3() {
  const { usualPain, mayGoOnAbove, ifItGivesWay, ...before } = ofVersion4();
  return { ...before, version: 3 };
}

describe('parsePlan(text)', () => {
  it('reads what was written', () => {
    expect(parsePlan(JSON.stringify(smallPlan()))).toEqual(smallPlan());
  });

  it('reads the invented example, which says that it is invented', () => {
    const url = new URL('../../../../fixtures/example.plan.json', import.meta.url);
    expect(parsePlan(readFileSync(url, 'utf8')).note).toMatch(/invented/);
  });

  it.each(['', 'knee over foot', JSON.stringify(smallPlan()).slice(0, 300), '\u0089PNG'])(
    'says of %j that it is not JSON',
    (text) => {
      expect(problemOf(text)).toBe(
        'This is not a plan: it is not JSON. Choose the plan file that you were given.',
      );
    },
  );

  it.each(['null', '7', '[]', '{}', '{"format":"overfoot-session","version":1}'])(
    'says of other JSON (%s) that it is not a plan',
    (text) => {
      expect(problemOf(text)).toBe('This is not a plan. Choose the plan file that you were given.');
    },
  );

  it('says of a newer version that the program must be updated', () => {
    expect(problemAfter((plan) => Object.assign(plan, { version: 10 }))).toBe(
      'This plan is of version 10; this program reads up to 9. Update the program.',
    );
  });

  it('reads limits of any measure', () => {
    fc.assert(
      fc.property(anyLimits, (limits) => {
        const isSenseless = limitedMeasures(limits).some((id) => {
          const { least = -Infinity, most = Infinity } = limits[id] ?? {};
          return least > most;
        });
        fc.pre(!isSenseless);
        const plan = smallPlan({ items: [smallItem({ limits })] });
        expect(parsePlan(JSON.stringify(plan))).toEqual(plan);
      }),
    );
  });

  it('reads a plan of version 1, which limits the knee alone', () => {
    expect(parsePlan(JSON.stringify({ ...older(9, 11), version: 1 }))).toEqual(migrated());
  });

  it('reads a plan of version 3, which knows one limit of pain', () => {
    expect(parsePlan(JSON.stringify(ofVersion3()))).toEqual(migrated());
  });

  it('reads a plan of version 4, with what it says of pain, and leaves open what it could not say', () => {
    const said = { usualPain: 3, mayGoOnAbove: true, ifItGivesWay: 'Sit down.' };
    expect(parsePlan(JSON.stringify(ofVersion4(said)))).toEqual(
      smallPlan({ ...said, perWeek: null, videoWish: null }),
    );
  });

  it('reads a plan of version 5, which was for a patient who reads English', () => {
    const said = { perWeek: 4, videoWish: 'none' } as const;
    expect(parsePlan(JSON.stringify(ofVersion5(said)))).toEqual(smallPlan({ ...said, language: 'en' }));
  });

  it('reads a plan of version 6, and leaves open what it could not say', () => {
    const plan = smallPlan({ language: 'es' });
    expect(parsePlan(JSON.stringify(ofVersion6({ language: 'es' })))).toEqual(plan);
    expect(plan.items[0]).toMatchObject({ stage: null, load: null, stepHeightCm: null, upTo: null });
    expect(plan).toMatchObject({ freeItems: [], autoStep: 'propose' });
  });

  it('reads everything that an item can say of its progress, what is free, and what the device may do', () => {
    const plan = smallPlan({
      items: [
        smallItem({
          task: 'lateral-step-down',
          sides: ['left', 'right'],
          seatHeightCm: null,
          stage: 'step-15',
          load: { kind: 'weight', level: '4 kg', where: 'hand' },
          support: 'fingertip',
          bendDeg: 55,
          sidesInTurn: true,
          perWeek: 2,
          stepHeightCm: 15,
          upTo: { min: 12, max: 16 },
        }),
        smallHold({ stage: 'hard-30', load: { kind: 'none' }, support: 'none', perWeek: 7 }),
      ],
      freeItems: [{ name: 'Walking', how: 'On level ground.', dose: '20 minutes' }],
      autoStep: 'within-plan',
    });
    expect(parsePlan(JSON.stringify(plan))).toEqual(plan);
  });

  it('reads a stage that the library does not know', () => {
    const plan = smallPlan({ items: [smallItem({ stage: 'a-stage-of-their-own' })] });
    expect(parsePlan(JSON.stringify(plan))).toEqual(plan);
  });

  it('reads the language of the patient', () => {
    expect(parsePlan(JSON.stringify(smallPlan({ language: 'es' }))).language).toBe('es');
    expect(problemAfter((plan) => Object.assign(plan, { language: 'xx' }))).toMatch(/damaged at "language"/);
  });

  it.each([
    [1, 'none'],
    [14, 'whole'],
  ] as const)('reads %i times a week, and a wish for the video: %s', (perWeek, videoWish) => {
    const plan = smallPlan({ perWeek, videoWish });
    expect(parsePlan(JSON.stringify(plan))).toEqual(plan);
  });

  it.each([{ returnKeys: [] }, { returnKeys: [keyOf('q')] }])(
    'reads a plan of version 7, which had one key or none: %j',
    (keys) => {
      const plan = smallPlan({ autoStep: 'never', items: [smallItem({ stage: 'seat-46' })], ...keys });
      expect(parsePlan(JSON.stringify(ofVersion7(plan)))).toEqual(plan);
      expect(parsePlan(JSON.stringify(ofVersion4(keys)))).toEqual(smallPlan(keys));
    },
  );

  it('reads a plan of version 8, at which the rules at home drew their lines as usual', () => {
    const plan = smallPlan({ returnKeys: [...'qp'].map(keyOf), autoStep: 'within-plan' });
    expect(parsePlan(JSON.stringify(ofVersion8(plan)))).toEqual(plan);
    expect(plan.thresholds).toEqual({});
  });

  it('reads where the rules draw their lines, each within its own range', () => {
    const plan = smallPlan({
      autoStep: 'within-plan',
      thresholds: { sessions: 5, leastExpectedShare: 0.75 },
    });
    expect(parsePlan(JSON.stringify(plan))).toEqual(plan);
    const after = (thresholds: object) => problemOf(JSON.stringify({ ...plan, thresholds }));
    expect(after({ sessions: 0 })).toMatch(/damaged at "thresholds\.sessions"/);
    expect(after({ sessions: 2.5 })).toMatch(/damaged at "thresholds\.sessions"/);
    expect(after({ leastExpectedShare: 1.1 })).toMatch(/damaged at "thresholds\.leastExpectedShare"/);
    expect(after({ luck: 1 })).toMatch(/damaged at "thresholds"/);
    expect(after({ ...plan.thresholds })).toBeNull();
  });

  it('reads a plan with five keys', () => {
    const plan = smallPlan({ returnKeys: [...'qpzry'].map(keyOf) });
    expect(parsePlan(JSON.stringify(plan))).toEqual(plan);
  });

  it('reads a plan of version 2, which limits the knee apart from the others', () => {
    const others = { 'trunk-lean': { least: -8, most: 12 }, depth: { most: 0.3 } };
    const limits = { 'knee-angle': { least: -7.5, most: 12 }, ...others };
    expect(parsePlan(JSON.stringify({ ...older(12, 7.5, { others }), version: 2 }))).toEqual(
      migrated({ items: [smallItem({ limits }), ...smallPlan().items.slice(1)] }),
    );
  });

  it('refuses limits of version 2 in a later plan', () => {
    expect(problemOf(JSON.stringify(older(9, 11)))).toMatch(/"items\.0\.limits/);
  });

  it('refuses a file that is too large before reading it', () => {
    const remark = 'x'.repeat(10_000_000);
    expect(problemOf(JSON.stringify(smallPlan({ words: remark })))).toMatch(/too large for a plan/);
  });

  it('accepts the largest plan within its bounds', () => {
    const long = (length: number) => '\u0001'.repeat(length);
    const { patient, words, howOften, beyondPainLimit, ifItGivesWay, note, items } = planBounds;
    const { stage, freeItems, freeName, freeHow, freeDose } = planBounds;
    const plan = smallPlan({
      patient: long(patient),
      words: long(words),
      howOften: long(howOften),
      beyondPainLimit: long(beyondPainLimit),
      ifItGivesWay: long(ifItGivesWay),
      note: long(note),
      items: Array.from({ length: items }, () =>
        smallItem({
          limits: allLimits,
          tempo: { downSeconds: 10.000001, pauseSeconds: 10.000001, upSeconds: 10.000001 },
          stage: long(stage),
          load: { kind: 'weight', level: long(longestLevel), where: 'above-knees' },
          support: 'fingertip',
          bendDeg: 10.000001,
          upTo: { min: 100, max: 200 },
        }),
      ),
      freeItems: Array.from({ length: freeItems }, () => ({
        name: long(freeName),
        how: long(freeHow),
        dose: long(freeDose),
      })),
      autoStep: 'within-plan',
      thresholds: Object.fromEntries(thresholdIds.map((id) => [id, thresholdFacts[id].max])),
    });
    const text = JSON.stringify(plan, null, 8);
    expect(text.length).toBeLessThan(largestPlanBytes);
    expect(parsePlan(text)).toEqual(plan);
  });

  it.each<[string, (plan: PlanDocument) => unknown, RegExp]>([
    ['0 repetitions', (p) => (first(p).repetitions = 0), /item 1 asks for 0 repetitions, where 1 to 200/],
    ['half a set', (p) => (second(p).sets = 0.5), /item 2 asks for 0.5 sets, where 1 to 20/],
    [
      'limits without room between them',
      (p) => (first(p).limits.depth = { least: 0.3, most: 0.2 }),
      /item 1 one limit of depth lies inside its opposite \(at most 20 %, at least 30 %\)/,
    ],
    ['too many holds', (p) => (second(p).holds = 21), /item 2 asks for 21 holds/],
    ['rest that runs backward', (p) => (second(p).restSeconds = -1), /item 2 asks for -1 seconds of rest/],
    ['a hold without length', (p) => (second(p).holdSeconds = 0), /item 2 asks for 0 seconds a hold/],
    [
      'a pain limit off the scale',
      (p) => (p.painLimit = 11),
      /it asks for 11 as the pain limit, where 0 to 10/,
    ],
    ['no time a week', (p) => (p.perWeek = 0), /it asks for 0 times a week, where 1 to 14 make/],
    ['too many times a week', (p) => (p.perWeek = 15), /it asks for 15 times a week, where 1 to 14 make/],
    ['a step of the moon', (p) => (first(p).stepHeightCm = 90), /item 1 asks for 90 cm of step height/],
    ['a knee that folds', (p) => (first(p).bendDeg = 170), /item 1 asks for 170 degrees of knee bend/],
    [
      'nothing to work up to',
      (p) => (first(p).upTo = { min: 0, max: 10 }),
      /item 1 asks for 0 repetitions to work up to, where 1 to 200 make/,
    ],
    [
      'a range that runs backward',
      (p) => (first(p).upTo = { min: 12, max: 10 }),
      /item 1 .* works up to 12 repetitions, which is more than 10/,
    ],
    [
      'an item more often than there are times',
      (p) => (second(p).perWeek = 15),
      /item 2 asks for 15 times a week/,
    ],
    [
      'a step without stepping',
      (p) => (first(p).stepHeightCm = 10),
      /\(Split-stance sit-to-stand\) gives a step height, but has no step/,
    ],
    ['a seat on the floor', (p) => (first(p).seatHeightCm = 2), /item 1 asks for 2 cm of seat height/],
    [
      'a limit beyond any knee',
      (p) => (first(p).limits['knee-angle'].most = 31),
      /31° inward as the limit of knee angle, where 1° to 30° make sense/,
    ],
    [
      'a limit inside its opposite',
      (p) => (first(p).limits = { 'knee-angle': { least: -8, most: -12 } }),
      /item 1 one limit of knee angle lies inside its opposite \(-12° inward, 8° outward\)/,
    ],
    [
      'a tempo without time',
      (p) => (first(p).tempo = { downSeconds: 0, pauseSeconds: 1, upSeconds: 2 }),
      /item 1 asks for 0 seconds down/,
    ],
    ['nothing to do', (p) => (p.items = []), /it holds nothing to do/],
    ['no side', (p) => (first(p).sides = []), /item 1 names no side/],
    ['a key twice', (p) => (p.returnKeys = [keyOf('q'), keyOf('q')]), /it names a key twice/],
    ['a side twice', (p) => (first(p).sides = ['left', 'left']), /item 1 .* names the left side twice/],
    [
      'a seat without sitting',
      (p) => (first(p).task = 'single-leg-squat'),
      /\(Single-leg squat\) gives a seat height, but has no seat/,
    ],
    [
      'a review before the plan',
      (p) => (p.reviewDate = '2024-03-04'),
      /review date \(2024-03-04\) is before/,
    ],
  ])('says what makes no sense for %s', (_, change, what) => {
    const problem = problemAfter(change);
    expect(problem).toMatch(what);
    expect(problem).toMatch(/^This plan makes no sense: .*\. Ask your therapist for a corrected one\.$/);
  });

  it.each<[string, (plan: PlanDocument) => unknown, RegExp]>([
    ['a version that never was', (p) => Object.assign(p, { version: 0 }), /"version"/],
    ['a field that is missing', (p) => Reflect.deleteProperty(p, 'footwear'), /"footwear"/],
    ['a field too many', (p) => Object.assign(first(p), { extra: 1 }), /"items\.0" .*extra/],
    ['a field of the other kind', (p) => Object.assign(second(p), { repetitions: 3 }), /"items\.1"/],
    ['an item of no kind', (p) => Object.assign(first(p), { kind: 'dance' }), /"items\.0\.kind"/],
    ['a task that is none', (p) => Object.assign(first(p), { task: 'jump' }), /"items\.0\.task"/],
    ['words for a number', (p) => Object.assign(first(p), { sets: 'three' }), /"items\.0\.sets"/],
    ['an empty pseudonym', (p) => (p.patient = ''), /"patient"/],
    ['a day that is none', (p) => (p.reviewDate = '2024-02-30'), /"reviewDate"/],
    ['a remark that is too long', (p) => (p.words = 'x'.repeat(2001)), /"words"/],
    ['a video that is none', (p) => Object.assign(p, { videoWish: 'half' }), /"videoWish"/],
    ['a key that is none', (p) => (p.returnKeys = ['age1abc']), /"returnKeys/],
    ['six keys', (p) => (p.returnKeys = [...'qpzryx'].map(keyOf)), /"returnKeys"/],
    ['the key of version 7', (p) => Object.assign(p, { returnKey: null }), /"returnKey"/],
    ['a load without a level', (p) => Object.assign(first(p), { load: { kind: 'loop' } }), /"items\.0\.load/],
    ['a support that is none', (p) => Object.assign(first(p), { support: 'foot' }), /"items\.0\.support"/],
    ['a step of a hold', (p) => Object.assign(second(p), { stepHeightCm: 10 }), /"items\.1"/],
    [
      'a free item without a name',
      (p) => (p.freeItems = [{ name: '', how: '', dose: '' }]),
      /"freeItems\.0\.name"/,
    ],
    ['a device that does as it likes', (p) => Object.assign(p, { autoStep: 'always' }), /"autoStep"/],
    ['items too many', (p) => (p.items = Array.from({ length: 21 }, () => smallItem())), /"items"/],
  ])('says where it is damaged for %s', (_, change, where) => {
    const problem = problemAfter(change);
    expect(problem).toMatch(/^This plan is damaged at /);
    expect(problem).toMatch(where);
    expect(problem).toMatch(sentences);
  });

  it('quotes only a little of what it does not know', () => {
    const problem = problemAfter((plan) => Object.assign(plan, { ['k'.repeat(50_000)]: 1 }));
    expect(problem!.length).toBeLessThan(400);
  });

  it('does not let a plan reach into other objects', () => {
    const reaching = JSON.stringify(smallPlan()).replace('{', '{"__proto__":{"reached":true},');
    expect(problemOf(reaching)).toMatch(sentences);
    expect('reached' in {}).toBe(false);
  });

  it('never crashes, and gives back only what is valid, whatever a field contains', () => {
    const fields = fc.constantFrom(...Object.keys(smallPlan()));
    const itemFields = fc.constantFrom(...Object.keys(smallItem()));
    fc.assert(
      fc.property(fields, itemFields, fc.json(), fc.boolean(), (field, itemField, json, inItem) => {
        const problem = problemAfter((plan) => {
          if (inItem) Object.assign(first(plan), { [itemField]: JSON.parse(json) });
          else Object.assign(plan, { [field]: JSON.parse(json) });
        });
        if (problem !== null) expect(problem).toMatch(sentences);
      }),
      { numRuns: 500 },
    );
  });

  it('never crashes on text of any kind', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(problemOf(text)).toMatch(sentences);
      }),
    );
  });

  it('takes what the schema writes', () => {
    expect(planSchema.parse(smallPlan())).toEqual(smallPlan());
  });
});
