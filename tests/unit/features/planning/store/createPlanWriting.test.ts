import { describe, expect, it } from 'vitest';
import { Problem } from '#core/problem';
import type { OwnThresholds } from '#core/programme/proposalThresholds';
import type { Restriction } from '#documents/patient/caseEntries';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';
import { newDraft, templateOf } from '#documents/plan/planDraft';
import {
  createPlanWriting,
  nothingKnown,
  painfulSideOf,
  type DraftName,
  type KnownPatient,
} from '#features/planning/store/createPlanWriting';
import { smallHold, smallItem, smallPlan } from '../../../../support/smallPlan';

function open(
  kept = new Map<DraftName, string>(),
  known: { patients?: KnownPatient[]; plans?: PlanDocument[]; isFull?: () => boolean } = {},
) {
  const saved: { fileName: string; text: string }[] = [];
  const handedOut: PlanDocument[] = [];
  let tellDeleted: (patient: string) => void = () => undefined;
  let ids = 0;
  const writing = createPlanWriting({
    read: (name) => kept.get(name) ?? null,
    write(name, text) {
      if (known.isFull?.() === true) return Promise.reject(new Problem('storage', 'It is full.'));
      kept.set(name, text);
      return Promise.resolve();
    },
    async keep(plan) {
      await Promise.resolve(handedOut.push(plan));
    },
    patients: () => Promise.resolve(known.patients ?? []),
    lastPlanOf: (name) => Promise.resolve(known.plans?.find(({ patient }) => patient === name) ?? null),
    signOver(name, override) {
      known.patients = (known.patients ?? []).map((one) =>
        one.pseudonym === name ? { ...one, overrides: [...one.overrides, override] } : one,
      );
      return Promise.resolve();
    },
    watchDeleted: (listener) => (tellDeleted = listener),
    saveFile: (fileName, text) => void saved.push({ fileName, text }),
    newId: () => `b7d4b0a5-2c55-4d6c-8a6e-3f1de2c86f${String(10 + ids++)}`,
    now: () => new Date('2026-03-05T07:08:09.010Z'),
  });
  const deletePatient = (patient: string) => tellDeleted(patient);
  return { writing, saved, kept, handedOut, deletePatient, state: () => writing.store.getState() };
}

/** What was begun without waiting for it. */
const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

function filled(kept?: Map<DraftName, string>) {
  const opened = open(kept);
  opened.writing.change({ patient: 'Grey Otter 3', items: [smallItem()] });
  return opened;
}

describe('createPlanWriting(world)', () => {
  it('starts empty, and says what is missing until it is a plan', () => {
    const { writing, state } = open();
    expect(state()).toMatchObject({ plan: null, fault: 'Give the patient a pseudonym; never their name.' });
    writing.change({ patient: 'Grey Otter 3' });
    expect(state().fault).toBe('Add at least one task.');
    writing.change({ items: [smallItem()] });
    expect(state()).toMatchObject({ fault: null, plan: { patient: 'Grey Otter 3' } });
  });

  it('says so while the device does not keep what is written', async () => {
    let isFull = true;
    const { writing, state } = open(undefined, { isFull: () => isFull });
    writing.change({ patient: 'Grey Otter 3' });
    await settled();
    expect(state()).toMatchObject({
      draft: { patient: 'Grey Otter 3' },
      problem: { sentence: 'It is full.' },
    });
    isFull = false;
    writing.change({ items: [smallItem()] });
    await settled();
    expect(state().problem).toBeNull();
  });

  it('undoes and redoes, typing in one field as one step', () => {
    const { writing, state } = filled();
    for (const words of ['S', 'Sl', 'Slow']) writing.change({ words }, 'words');
    writing.change({ painLimit: 2 }, 'painLimit');
    writing.undo();
    expect(state().draft).toMatchObject({ words: 'Slow', painLimit: 3 });
    writing.undo();
    expect(state().draft.words).toBe('');
    writing.redo();
    writing.redo();
    expect(state().draft).toMatchObject({ words: 'Slow', painLimit: 2 });
    expect(state().canRedo).toBe(false);
    writing.undo();
    writing.change({ words: 'Other' }, 'words');
    expect(state().canRedo).toBe(false);
  });

  it('continues with the draft after the page was closed, even one that is not valid yet', () => {
    const { kept, writing } = filled();
    writing.change({ items: [smallItem({ repetitions: 0 }), smallHold()] });
    const { state } = open(kept);
    expect(state().draft).toMatchObject({
      patient: 'Grey Otter 3',
      items: [{ repetitions: 0 }, { holds: 2 }],
    });
    expect(state().fault).toMatch(/0 repetitions/);
  });

  it('continues with a draft from before items had stages', () => {
    const { stage, load, support, bendDeg, sidesInTurn, perWeek, stepHeightCm, upTo, ...before } =
      smallItem();
    const draft = JSON.stringify({ patient: 'Grey Otter 3', items: [before] });
    expect(open(new Map([['draft', draft]])).state().plan?.items).toEqual([smallItem()]);
  });

  it.each([null, `age1${'q'.repeat(58)}`])(
    'continues with a draft from when it had one key or none: %j',
    (key) => {
      const { returnKeys, ...draft } = smallPlan({ reviewDate: null });
      const text = JSON.stringify({ ...draft, returnKey: key });
      const { format, version, id, createdAt, ...rest } = JSON.parse(text) as Record<string, unknown>;
      const { plan } = open(new Map([['draft', JSON.stringify(rest)]])).state();
      expect(plan?.returnKeys).toEqual(key === null ? [] : [key]);
    },
  );

  it('ignores a draft that is damaged or from elsewhere', () => {
    for (const text of ['', '{', 'null', '{"items":7}', '{"items":[{"kind":"other"}]}'])
      expect(open(new Map([['draft', text]])).state().draft.items).toEqual([]);
  });

  it('saves a file without a name in its name', () => {
    const { writing, saved, state } = filled();
    writing.save();
    expect(saved[0]!.fileName).toBe('overfoot-plan-2026-03-05.json');
    expect(parsePlan(saved[0]!.text)).toEqual(state().plan);
  });

  it('gives a plan that is changed after it was handed out another id', () => {
    const { writing, saved } = filled();
    writing.save();
    writing.save();
    writing.change({ words: 'More slowly.' });
    writing.save();
    const [first, again, changed] = saved.map(({ text }) => parsePlan(text).id);
    expect(again).toBe(first);
    expect(changed).not.toBe(first);
  });

  it('makes no plan beyond a restriction, until somebody signs over it; a changed task asks again', async () => {
    const restriction: Restriction = {
      ...{ id: 'r', at: '2026-03-01T08:00:00.000Z', by: 'AB', withdrawn: null, until: '2026-03-05' },
      ...{ kind: 'bend', side: 'right', setBy: 'surgeon', mostDeg: 60 },
    };
    const patients = [{ ...nothingKnown, pseudonym: 'Grey Otter 3', restrictions: [restriction] }];
    const { writing, state } = open(undefined, { patients });
    writing.change({ patient: 'Grey Otter 3', items: [smallItem({ bendDeg: 90 })] });
    await writing.enter();
    expect(state()).toMatchObject({
      plan: null,
      fault: expect.stringMatching(/beyond a restriction/) as string,
    });
    await writing.signOver(state().refusals[0]!, 'CD', 'Agreed by telephone.');
    expect(state()).toMatchObject({ fault: null, refusals: [] });
    expect(state().plan).not.toBeNull();
    writing.change({ items: [smallItem({ bendDeg: 100 })] });
    expect(state()).toMatchObject({ plan: null, refusals: [{ item: { bendDeg: 100 } }] });
    writing.change({ items: [smallItem({ bendDeg: 60 })] });
    expect(state().fault).toBeNull();
  });

  it('takes along where the rules draw their lines for the patient, where the device at home needs them', async () => {
    const patients = [
      { ...nothingKnown, pseudonym: 'Grey Otter 3', thresholds: { sessions: 4 } },
      { ...nothingKnown, pseudonym: 'Red Heron 41', thresholds: {} },
    ];
    const { writing, state } = open(undefined, { patients });
    await writing.enter();
    writing.change({ patient: 'Grey Otter 3', items: [smallItem()] });
    expect(state().plan?.thresholds).toEqual({});
    writing.change({ autoStep: 'within-plan' });
    expect(state().plan?.thresholds).toEqual({ sessions: 4 });
    writing.change({ patient: 'Red Heron 41' });
    expect(state().plan?.thresholds).toEqual({});
    writing.change({ patient: 'nobody known' });
    expect(state().plan?.thresholds).toEqual({});
  });

  it('is another plan once the lines changed after it was handed out', async () => {
    const known = {
      patients: [{ ...nothingKnown, pseudonym: 'Grey Otter 3', thresholds: {} as OwnThresholds }],
    };
    const { writing, state, handedOut } = open(undefined, known);
    await writing.enter();
    writing.change({ patient: 'Grey Otter 3', items: [smallItem()], autoStep: 'within-plan' });
    writing.save();
    const first = state().plan!;
    await writing.enter();
    expect(state().plan).toEqual(first);
    known.patients[0]!.thresholds = { sessions: 5 };
    await writing.enter();
    expect(state().plan?.thresholds).toEqual({ sessions: 5 });
    expect(state().plan?.id).not.toBe(first.id);
    expect(handedOut).toEqual([first]);
  });

  const known = {
    patients: [
      { ...nothingKnown, pseudonym: 'Grey Otter 3', painfulSide: 'left' as const },
      { ...nothingKnown, pseudonym: 'Red Heron 41' },
    ],
    plans: [smallPlan({ patient: 'Grey Otter 3', reviewDate: '2026-04-01', usualPain: 2 })],
  };

  it('continues from the last plan of the patient, and from nobody else’s', async () => {
    const { writing, state } = open(undefined, known);
    await writing.enter();
    writing.change({ patient: 'Red Heron 41' }, 'patient');
    await settled();
    expect(state().theirLast).toBeNull();
    writing.copyTheirs();
    expect(state().draft.items).toEqual([]);
    writing.change({ patient: 'Grey Otter 3' }, 'patient');
    await settled();
    expect(state().theirLast?.id).toBe(known.plans[0]!.id);
    writing.copyTheirs();
    expect(state()).toMatchObject({
      draft: { patient: 'Grey Otter 3', usualPain: 2, items: smallPlan().items, reviewDate: null },
      plan: { patient: 'Grey Otter 3' },
    });
    expect(state().plan!.id).not.toBe(known.plans[0]!.id);
    writing.undo();
    expect(state().draft.items).toEqual([]);
  });

  it('opens the last plan of a patient to be changed, and an empty one where there is none', async () => {
    const { writing, state } = open(undefined, known);
    await writing.enter();
    await writing.writeFor('Grey Otter 3');
    expect(state()).toMatchObject({ fault: null, draft: { patient: 'Grey Otter 3' } });
    await writing.writeFor('Red Heron 41');
    expect(state().draft).toMatchObject({ patient: 'Red Heron 41', items: [] });
  });

  it('asks about a pseudonym that looks like a known one before it is handed out', async () => {
    const { writing, state } = open(undefined, known);
    await writing.enter();
    writing.change({ patient: 'Grey Oter 3', items: [smallItem()] });
    expect(state()).toMatchObject({ near: 'Grey Otter 3', plan: null });
    expect(state().fault).toBe('Say whether Grey Oter 3 is Grey Otter 3, who is known here.');
    writing.denyNear();
    expect(state()).toMatchObject({ near: null, fault: null, plan: { patient: 'Grey Oter 3' } });
  });

  it('knows which knee of the patient hurts', async () => {
    const { writing, state } = open(undefined, known);
    await writing.enter();
    writing.change({ patient: ' Grey Otter 3' });
    expect(painfulSideOf(state())).toBe('left');
    writing.change({ patient: 'Somebody else 12' });
    expect(painfulSideOf(state())).toBeNull();
  });

  it('is no plan while the side of a task is open, and says of which', () => {
    const { writing, state } = filled();
    writing.change({ items: [smallItem(), smallHold({ sides: [] })] });
    expect(state()).toMatchObject({
      plan: null,
      fault: 'Choose the side of task 2 (Quadriceps press, held).',
    });
  });

  it('fills the draft from a template, but for whom it is and who can open what comes back', () => {
    const { writing, state } = filled();
    writing.change({ usualPain: 1, words: 'To you.', returnKeys: ['age1own'] });
    const template = templateOf({ ...newDraft(), items: [smallItem()], painLimit: 2, returnKeys: ['age1x'] });
    expect(template).toMatchObject({ items: [smallItem({ sides: [] })], returnKeys: [] });
    writing.useTemplate({ ...template, returnKeys: ['age1other'] });
    expect(state().draft).toEqual({
      ...template,
      patient: 'Grey Otter 3',
      usualPain: 1,
      returnKeys: ['age1own'],
    });
  });

  it('starts without a practice where what is kept can’t be read', () => {
    expect(open(new Map<DraftName, string>([['practice', '{"name":7}']])).state().practice).toBeNull();
  });

  it('asks about the practice once', () => {
    const { writing, kept } = filled();
    writing.setPractice({ name: 'Invented Practice', telephone: '555 0100' });
    expect(open(kept).state().practice).toEqual({ name: 'Invented Practice', telephone: '555 0100' });
  });

  it('forgets a deleted patient, in the undo history too', () => {
    const { writing, deletePatient, state } = filled();
    writing.handedOut();
    writing.change({ words: 'Slow' });
    deletePatient('Another 1');
    expect(state()).toMatchObject({
      draft: { patient: 'Grey Otter 3' },
      theirLast: { patient: 'Grey Otter 3' },
    });
    deletePatient('Grey Otter 3');
    expect(state()).toMatchObject({ draft: { patient: '' }, theirLast: null, patients: [] });
    writing.undo();
    expect(JSON.stringify(state())).not.toContain('Otter');
  });

  it('stores each plan that is handed out, a changed one as a new plan', () => {
    const { writing, handedOut } = filled();
    writing.save();
    writing.change({ painLimit: 2 });
    expect(handedOut.map(({ painLimit }) => painLimit)).toEqual([3]);
    writing.handedOut();
    expect(handedOut.map(({ painLimit }) => painLimit)).toEqual([3, 2]);
    expect(new Set(handedOut.map(({ id }) => id)).size).toBe(2);
  });
});
