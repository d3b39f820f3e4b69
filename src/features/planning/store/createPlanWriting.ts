import { createStore, type StoreApi } from 'zustand/vanilla';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';
import { copyOf, finishDraft, newDraft, type PlanDraft } from '#documents/plan/planDraft';

export interface PlanWritingState {
  draft: PlanDraft;
  /** The draft as a plan, made anew with each change; null while something makes no sense. */
  plan: PlanDocument | null;
  /** What still makes no sense; null with a plan. */
  fault: string | null;
  canUndo: boolean;
  canRedo: boolean;
  /** The plan that was handed out last on this device; null before the first. */
  last: PlanDocument | null;
}

/** What plan writing needs from the world around it; tests hand in plain objects. */
export interface PlanWritingWorld {
  /** Texts that outlast the tab, by name; null where there is none or nothing can be kept. */
  read(name: DraftName): string | null;
  write(name: DraftName, text: string): void;
  /** Keeps a plan that was handed out: what comes back is looked at by its limits. */
  keep(plan: PlanDocument): void;
  saveFile(fileName: string, text: string): void;
  newId(): string;
  now(): Date;
}
export type DraftName = 'draft' | 'last-plan';

export interface PlanWriting {
  readonly store: StoreApi<PlanWritingState>;
  /**
   * @param field  changes of the same field one after another are undone together
   */
  change(change: Partial<PlanDraft>, field?: string): void;
  undo(): void;
  redo(): void;
  /** An empty plan; can be undone. */
  startNew(): void;
  /** The last plan for another patient; can be undone. */
  copyLast(): void;
  /** Hands the plan out as a file; nothing while it makes no sense. */
  save(): void;
  /** To be called when it was handed out in another way: as a link or on paper. */
  handedOut(): void;
  /** Forgets what it has of a patient who is deleted; nothing of it can be brought back. */
  forget(patient: string): void;
}

/** Changes that can be undone. */
const longestHistory = 200;

/** Writing a plan: each change is kept, can be undone, and is checked at once. */
export function createPlanWriting(world: PlanWritingWorld): PlanWriting {
  let past: PlanDraft[] = [];
  let future: PlanDraft[] = [];
  let lastField: string | null = null;
  let identity = { id: world.newId(), createdAt: world.now().toISOString() };

  const stateOf = (draft: PlanDraft): Omit<PlanWritingState, 'last'> => {
    const finished = finishDraft(draft, identity.id, identity.createdAt);
    return {
      draft,
      plan: finished.kind === 'plan' ? finished.plan : null,
      fault: finished.kind === 'plan' ? null : finished.sentence,
      canUndo: past.length > 0,
      canRedo: future.length > 0,
    };
  };
  const store = createStore<PlanWritingState>(() => ({
    ...stateOf(readDraft(world) ?? newDraft()),
    last: readLast(world),
  }));
  const show = (draft: PlanDraft) => {
    store.setState(stateOf(draft));
    world.write('draft', JSON.stringify(draft));
  };
  const put = (draft: PlanDraft, field: string | null) => {
    // What was handed out stays what it was: a changed plan is another one.
    if (store.getState().last?.id === identity.id)
      identity = { id: world.newId(), createdAt: world.now().toISOString() };
    if (field === null || field !== lastField)
      past = [...past, store.getState().draft].slice(-longestHistory);
    future = [];
    lastField = field;
    show(draft);
  };
  const handedOut = () => {
    const { plan } = store.getState();
    if (plan === null) return;
    world.write('last-plan', JSON.stringify(plan));
    world.keep(plan);
    store.setState({ last: plan });
  };

  return {
    store,
    change: (change, field) => put({ ...store.getState().draft, ...change }, field ?? null),
    undo() {
      const before = past.at(-1);
      if (before === undefined) return;
      future = [store.getState().draft, ...future];
      past = past.slice(0, -1);
      lastField = null;
      show(before);
    },
    redo() {
      const [next, ...later] = future;
      if (next === undefined) return;
      past = [...past, store.getState().draft];
      future = later;
      lastField = null;
      show(next);
    },
    startNew: () => put(newDraft(), null),
    copyLast() {
      const { last } = store.getState();
      if (last !== null) put(copyOf(last), null);
    },
    save() {
      const { plan } = store.getState();
      if (plan === null) return;
      world.saveFile(`overfoot-plan-${plan.createdAt.slice(0, 10)}.json`, JSON.stringify(plan, null, 2));
      handedOut();
    },
    handedOut,
    forget(patient) {
      const isOther = (one: { patient: string }) => one.patient !== patient;
      past = past.filter(isOther);
      future = future.filter(isOther);
      const { draft, last } = store.getState();
      if (last?.patient === patient) store.setState({ last: null });
      store.setState(stateOf(isOther(draft) ? draft : newDraft()));
    },
  };
}

function readLast(world: PlanWritingWorld): PlanDocument | null {
  try {
    return parsePlan(world.read('last-plan') ?? '');
  } catch {
    return null; // None yet, or one of another version.
  }
}

/** The draft that was kept, where it is still one. */
function readDraft(world: PlanWritingWorld): PlanDraft | null {
  try {
    const kept = JSON.parse(world.read('draft') ?? '') as Partial<PlanDraft>;
    const draft: PlanDraft = { ...newDraft(), ...kept };
    // Half a plan can't be checked by the plan's schema; what the form can't show is not taken over.
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
