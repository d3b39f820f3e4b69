import { describe, expect, it } from 'vitest';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';
import { createPlanWriting, type DraftName } from '#features/planning/store/createPlanWriting';
import { smallHold, smallItem } from '../../../../support/smallPlan';

function open(kept = new Map<DraftName, string>()) {
  const saved: { fileName: string; text: string }[] = [];
  const handedOut: PlanDocument[] = [];
  let tellDeleted: (patient: string) => void = () => undefined;
  let ids = 0;
  const writing = createPlanWriting({
    read: (name) => kept.get(name) ?? null,
    write: (name, text) => void kept.set(name, text),
    keep: (plan) => void handedOut.push(plan),
    watchDeleted: (listener) => (tellDeleted = listener),
    saveFile: (fileName, text) => void saved.push({ fileName, text }),
    newId: () => `b7d4b0a5-2c55-4d6c-8a6e-3f1de2c86f${String(10 + ids++)}`,
    now: () => new Date('2026-03-05T07:08:09.010Z'),
  });
  const deletePatient = (patient: string) => tellDeleted(patient);
  return { writing, saved, kept, handedOut, deletePatient, state: () => writing.store.getState() };
}

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

  it('ignores a draft that is damaged or from elsewhere', () => {
    for (const text of ['', '{', 'null', '{"items":7}', '{"items":[{"kind":"other"}]}'])
      expect(open(new Map([['draft', text]])).state().draft.items).toEqual([]);
  });

  it('saves a file without a name in its name, and remembers it as the last plan', () => {
    const { writing, saved, state, kept } = filled();
    writing.save();
    expect(saved[0]!.fileName).toBe('overfoot-plan-2026-03-05.json');
    expect(parsePlan(saved[0]!.text)).toEqual(state().plan);
    expect(open(kept).state().last).toEqual(parsePlan(saved[0]!.text));
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

  it('copies the last plan for somebody else, and undoes that', () => {
    const { writing, state } = filled();
    writing.save();
    writing.startNew();
    expect(state().draft.items).toEqual([]);
    writing.copyLast();
    expect(state().draft).toMatchObject({ patient: '', items: [smallItem()] });
    writing.undo();
    writing.undo();
    expect(state().draft.patient).toBe('Grey Otter 3');
  });

  it('forgets a deleted patient, in the undo history too', () => {
    const { writing, deletePatient, state } = filled();
    writing.handedOut();
    writing.change({ words: 'Slow' });
    deletePatient('Another 1');
    expect(state()).toMatchObject({ draft: { patient: 'Grey Otter 3' }, last: { patient: 'Grey Otter 3' } });
    deletePatient('Grey Otter 3');
    expect(state()).toMatchObject({ draft: { patient: '' }, last: null });
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
