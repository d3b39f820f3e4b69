import { createStore, type StoreApi } from 'zustand/vanilla';
import { applyEdit, redoEdit, startHistory, undoEdit, type History } from '#core/history';
import { withProgress } from '#documents/plan/itemProgress';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';
import { copyOf, finishDraft, newDraft, type PlanDraft } from '#documents/plan/planDraft';

export interface PlanWritingState {
  draft: PlanDraft;
  /** The draft as a plan, rebuilt on each change; null while something is invalid. */
  plan: PlanDocument | null;
  /** What is still invalid; null when there is a plan. */
  fault: string | null;
  canUndo: boolean;
  canRedo: boolean;
  /** The plan that was handed out last on this device; null before the first. */
  last: PlanDocument | null;
}

/** What plan writing needs from its environment; tests pass plain objects. */
export interface PlanWritingWorld {
  /** Texts that outlive the tab, by name; null where there is none or storage is blocked. */
  read(name: DraftName): string | null;
  write(name: DraftName, text: string): void;
  /** Stores a plan that was handed out: sessions sent back are judged by its limits. */
  keep(plan: PlanDocument): void;
  /** Hears of each patient of whom everything was deleted. */
  watchDeleted(listener: (patient: string) => void): void;
  saveFile(fileName: string, text: string): void;
  newId(): string;
  now(): Date;
}
export const draftNames = ['draft', 'last-plan'] as const;
export type DraftName = (typeof draftNames)[number];

export interface PlanWriting {
  readonly store: StoreApi<PlanWritingState>;
  /** @param field  consecutive changes to the same field are undone together */
  change(change: Partial<PlanDraft>, field?: string): void;
  undo(): void;
  redo(): void;
  /** An empty plan; can be undone. */
  startNew(): void;
  /** Copies the last plan for another patient; can be undone. */
  copyLast(): void;
  /** Hands the plan out as a file; does nothing while it is invalid. */
  save(): void;
  /** To be called when the plan was handed out another way: as a link or on paper. */
  handedOut(): void;
}

/** Changes that can be undone. */
const longestHistory = 200;

/** Writing a plan: each change is stored, can be undone, and is checked at once. */
export function createPlanWriting(world: PlanWritingWorld): PlanWriting {
  /** The draft is the last one; the first can't be undone. */
  let drafts = startHistory([readDraft(world) ?? newDraft()]);
  let lastField: string | null = null;
  let identity = { id: world.newId(), createdAt: world.now().toISOString() };

  const currentState = (): Omit<PlanWritingState, 'last'> => {
    const draft = drafts.done.at(-1)!;
    const finished = finishDraft(draft, identity.id, identity.createdAt);
    return {
      draft,
      plan: finished.kind === 'plan' ? finished.plan : null,
      fault: finished.kind === 'plan' ? null : finished.sentence,
      canUndo: drafts.done.length > 1,
      canRedo: drafts.undone.length > 0,
    };
  };
  const store = createStore<PlanWritingState>(() => ({
    ...currentState(),
    last: readLast(world),
  }));
  const show = (next: History<PlanDraft>, field: string | null = null) => {
    drafts = next;
    lastField = field;
    store.setState(currentState());
    world.write('draft', JSON.stringify(store.getState().draft));
  };
  const put = (draft: PlanDraft, field: string | null = null) => {
    // A plan that was handed out stays as it was: a changed plan is a new one.
    if (store.getState().last?.id === identity.id)
      identity = { id: world.newId(), createdAt: world.now().toISOString() };
    const isSameField = field !== null && field === lastField;
    const { done, ...rest } = applyEdit(isSameField ? undoEdit(drafts) : drafts, draft);
    show({ ...rest, done: done.slice(-1 - longestHistory) }, field);
  };
  const handedOut = () => {
    const { plan } = store.getState();
    if (plan === null) return;
    world.write('last-plan', JSON.stringify(plan));
    world.keep(plan);
    store.setState({ last: plan });
  };

  /** Not even undo brings back a deleted patient. */
  world.watchDeleted((patient) => {
    const isOther = (one: { patient: string }) => one.patient !== patient;
    const { draft, last } = store.getState();
    const done = drafts.done.filter(isOther);
    drafts = {
      ...drafts,
      done: isOther(draft) ? done : [...done, newDraft()],
      undone: drafts.undone.filter(isOther),
    };
    store.setState({ ...currentState(), last: last !== null && isOther(last) ? last : null });
  });

  return {
    store,
    change: (change, field) => put({ ...store.getState().draft, ...change }, field),
    undo() {
      if (drafts.done.length > 1) show(undoEdit(drafts));
    },
    redo() {
      if (drafts.undone.length > 0) show(redoEdit(drafts));
    },
    startNew: () => put(newDraft()),
    copyLast() {
      const { last } = store.getState();
      if (last !== null) put(copyOf(last));
    },
    save() {
      const { plan } = store.getState();
      if (plan === null) return;
      world.saveFile(`overfoot-plan-${plan.createdAt.slice(0, 10)}.json`, JSON.stringify(plan, null, 2));
      handedOut();
    },
    handedOut,
  };
}

function readLast(world: PlanWritingWorld): PlanDocument | null {
  try {
    return parsePlan(world.read('last-plan') ?? '');
  } catch {
    return null; // None yet, or one of another version.
  }
}

/** The stored draft, if it is still valid as a draft. */
function readDraft(world: PlanWritingWorld): PlanDraft | null {
  try {
    const kept = JSON.parse(world.read('draft') ?? '') as Partial<PlanDraft>;
    const draft: PlanDraft = { ...newDraft(), ...kept, items: (kept.items ?? []).map(withProgress) };
    // Half a plan can't be checked by the plan's schema; what the form can't show is dropped.
    const shown = finishDraft(
      { ...draft, patient: 'x', beyondPainLimit: 'x' },
      world.newId(),
      world.now().toISOString(),
    );
    return shown.kind === 'damaged' ? null : draft;
  } catch {
    return null;
  }
}
