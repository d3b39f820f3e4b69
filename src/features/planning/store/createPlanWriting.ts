import { createStore, type StoreApi } from 'zustand/vanilla';
import { applyEdit, redoEdit, startHistory, undoEdit, type History } from '#core/history';
import { areSameThresholds, type OwnThresholds } from '#core/programme/proposalThresholds';
import type { Override, Restriction } from '#documents/patient/caseEntries';
import { nearPseudonym } from '#documents/patient/nearPseudonym';
import type { PainfulSide } from '#documents/patient/patientDocument';
import type { PlanDocument } from '#documents/plan/planDocument';
import { finishDraft, newDraft, nextPlanOf, type PlanDraft } from '#documents/plan/planDraft';
import { readDraft } from '#documents/plan/readDraft';
import { plainName } from '#documents/schema/plainName';
import { explainProblem, type ShownProblem } from '#shell/explainProblem';
import { isoDay } from '#words/dateWords';
import { findRefusals, restrictionsInForce, type Refusal } from '../rules/refusals';
import { readJson, readPractice, type Practice } from './practice';

/** A patient of this device, as far as plan writing needs it. */
export interface KnownPatient {
  pseudonym: string;
  /** Null where nothing is noted. */
  painfulSide: PainfulSide | null;
  /** As a surgeon or doctor set them, whether they still count or not. */
  restrictions: readonly Restriction[];
  overrides: readonly Override[];
  /** Where the rules draw their lines for them; null where there is no record. */
  thresholds: OwnThresholds | null;
}

/** Of somebody of whom nothing is noted. */
export const nothingKnown = {
  painfulSide: null,
  restrictions: [],
  overrides: [],
  thresholds: null,
} as const satisfies Omit<KnownPatient, 'pseudonym'>;

export interface PlanWritingState {
  draft: PlanDraft;
  /** The draft as a plan, rebuilt on each change; null while something is invalid. */
  plan: PlanDocument | null;
  /** What is still invalid; null when there is a plan. */
  fault: string | null;
  canUndo: boolean;
  canRedo: boolean;
  /** The patients of this device; none until they are read. */
  patients: readonly KnownPatient[];
  /** The last plan of the patient whom the draft is for; null where there is none, or none is known yet. */
  theirLast: PlanDocument | null;
  /** A known pseudonym that the draft's is probably meant to be; null where there is none, or that was denied. */
  near: string | null;
  /** Restrictions of the draft's patient that count today. */
  restrictions: readonly Restriction[];
  /** Items beyond them that nobody has signed over; until then there is no plan. */
  refusals: readonly Refusal[];
  /** Null where it was never asked. */
  practice: Practice | null;
  /** Why the device keeps what was written no longer than the page is open; null where it does. */
  problem: ShownProblem | null;
}

/** What plan writing needs from its environment; tests pass plain objects. */
export interface PlanWritingWorld {
  /** Texts that outlive the tab, by name; null where there is none or storage is blocked. */
  read(name: DraftName): string | null;
  /** Rejects where it can't be stored. */
  write(name: DraftName, text: string): Promise<void>;
  /** Stores a plan that was handed out: sessions sent back are judged by its limits. Rejects where it can't be stored. */
  keep(plan: PlanDocument): Promise<void>;
  /** None where nothing can be read. */
  patients(): Promise<readonly KnownPatient[]>;
  /** The plan that was handed out last to the patient of that pseudonym; null where none is kept. */
  lastPlanOf(patient: string): Promise<PlanDocument | null>;
  /** Keeps in a patient's record that somebody answers for an item. Rejects where it can't be stored. */
  signOver(patient: string, override: Override): Promise<void>;
  /** Hears of each patient of whom everything was deleted. */
  watchDeleted(listener: (patient: string) => void): void;
  saveFile(fileName: string, text: string): void;
  newId(): string;
  now(): Date;
}
export const draftNames = ['draft', 'practice'] as const;
export type DraftName = (typeof draftNames)[number];

export interface PlanWriting {
  readonly store: StoreApi<PlanWritingState>;
  /** @param field  consecutive changes to the same field are undone together */
  change(change: Partial<PlanDraft>, field?: string): void;
  undo(): void;
  redo(): void;
  /** An empty plan; can be undone. */
  startNew(): void;
  /** To be called when the screen appears: reads who is known here. */
  enter(): Promise<void>;
  /** Continues from the last plan of that patient, or begins their first one; can be undone. */
  writeFor(patient: string): Promise<void>;
  /** Continues from the last plan of the patient whom the draft is for; can be undone. */
  copyTheirs(): void;
  /** That the draft's patient is nobody else, however alike the pseudonyms look. */
  denyNear(): void;
  /** Allows an item beyond a restriction; it is kept with the patient's record. */
  signOver(refusal: Refusal, by: string, why: string): Promise<void>;
  /** Fills the draft from a template; whom it is for, and who can open what comes back, stay. Can be undone. */
  useTemplate(template: PlanDraft): void;
  setPractice(practice: Practice): void;
  dismissProblem(): void;
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
  let drafts = startHistory([readDraft(readJson(world.read('draft'))) ?? newDraft()]);
  let lastField: string | null = null;
  const newIdentity = () => ({ id: world.newId(), createdAt: world.now().toISOString() });
  let identity = newIdentity();
  let isHandedOut = false;
  /** Pseudonyms that are nobody else's, as somebody said. */
  const denied = new Set<string>();
  let asked = 0;

  const currentState = (patients: readonly KnownPatient[]) => {
    const draft = drafts.done.at(-1)!;
    const name = plainName(draft.patient);
    const near = denied.has(name) ? null : nearPseudonym(name, namesOf(patients));
    const today = isoDay(world.now().toISOString());
    const known = patients.find(({ pseudonym }) => pseudonym === name) ?? nothingKnown;
    // Only a device that changes something by itself needs them.
    const thresholds = draft.autoStep === 'within-plan' ? (known.thresholds ?? draft.thresholds) : {};
    const finished = finishDraft({ ...draft, thresholds }, identity.id, identity.createdAt);
    const refusals = findRefusals(draft.items, known.restrictions, known.overrides, today);
    const refused =
      refusals.length === 0 ? null : 'A task is beyond a restriction: change it, or sign over it.';
    const doubt = near === null ? null : `Say whether ${name} is ${near}, who is known here.`;
    return {
      draft,
      near,
      restrictions: restrictionsInForce(known.restrictions, today),
      refusals,
      plan: finished.kind === 'plan' && near === null && refused === null ? finished.plan : null,
      fault: doubt ?? (finished.kind === 'plan' ? refused : finished.sentence),
      canUndo: drafts.done.length > 1,
      canRedo: drafts.undone.length > 0,
    };
  };
  const store = createStore<PlanWritingState>(() => ({
    ...currentState([]),
    patients: [],
    theirLast: null,
    practice: readPractice(world.read('practice')),
    problem: null,
  }));
  /** The page keeps what could not be stored, and says so until something can be stored again. */
  const settle = (kept: Promise<void>) =>
    void kept.then(
      () => store.setState({ problem: null }),
      (error: unknown) => store.setState({ problem: explainProblem(error, 'keep') }),
    );
  const refresh = () => {
    const { patients, theirLast, plan } = store.getState();
    let current = currentState(patients);
    if (isHandedOut && !haveSameThresholds(plan, current.plan)) {
      identity = newIdentity();
      isHandedOut = false;
      current = currentState(patients);
    }
    const isTheirs = theirLast?.patient === plainName(current.draft.patient);
    store.setState({ ...current, theirLast: isTheirs ? theirLast : null });
    if (!isTheirs) void findTheirs();
  };
  /** Looks for the last plan of whom the draft is for. */
  const findTheirs = async () => {
    const mine = ++asked;
    const { draft, patients } = store.getState();
    const name = plainName(draft.patient);
    if (!namesOf(patients).includes(name)) return;
    const theirLast = await world.lastPlanOf(name);
    if (mine === asked) store.setState({ theirLast });
  };
  const show = (next: History<PlanDraft>, field: string | null = null) => {
    drafts = next;
    lastField = field;
    refresh();
    settle(world.write('draft', JSON.stringify(store.getState().draft)));
  };
  const put = (draft: PlanDraft, field: string | null = null) => {
    // A plan that was handed out stays as it was: a changed plan is a new one.
    if (isHandedOut) identity = newIdentity();
    isHandedOut = false;
    const isSameField = field !== null && field === lastField;
    const { done, ...rest } = applyEdit(isSameField ? undoEdit(drafts) : drafts, draft);
    show({ ...rest, done: done.slice(-1 - longestHistory) }, field);
  };
  const handedOut = () => {
    const { plan } = store.getState();
    if (plan === null) return;
    settle(world.keep(plan));
    isHandedOut = true;
    const { patients } = store.getState();
    const isKnown = namesOf(patients).includes(plan.patient);
    store.setState({
      theirLast: plan,
      patients: isKnown ? patients : [...patients, { ...nothingKnown, pseudonym: plan.patient }],
    });
  };

  /** Not even undo brings back a deleted patient. */
  world.watchDeleted((patient) => {
    const isOther = (one: { patient: string }) => plainName(one.patient) !== patient;
    const { draft, patients, theirLast } = store.getState();
    const done = drafts.done.filter(isOther);
    drafts = {
      ...drafts,
      done: isOther(draft) ? done : [...done, newDraft()],
      undone: drafts.undone.filter(isOther),
    };
    store.setState({
      patients: patients.filter(({ pseudonym }) => pseudonym !== patient),
      theirLast: theirLast !== null && isOther(theirLast) ? theirLast : null,
    });
    refresh();
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
    async enter() {
      store.setState({ patients: await world.patients() });
      refresh();
    },
    async writeFor(patient) {
      const last = await world.lastPlanOf(patient);
      put(last === null ? { ...newDraft(), patient } : nextPlanOf(last));
      store.setState({ theirLast: last });
    },
    copyTheirs() {
      const { theirLast } = store.getState();
      if (theirLast !== null) put(nextPlanOf(theirLast));
    },
    denyNear() {
      denied.add(plainName(store.getState().draft.patient));
      refresh();
    },
    async signOver({ restriction, item, sentence }, by, why) {
      const override: Override = {
        id: world.newId(),
        at: world.now().toISOString(),
        by,
        restriction: restriction.id,
        task: item.task,
        refusal: sentence,
        why,
      };
      const name = plainName(store.getState().draft.patient);
      try {
        await world.signOver(name, override);
        store.setState({ problem: null, patients: await world.patients() });
        refresh();
      } catch (error) {
        store.setState({ problem: explainProblem(error, 'keep') });
      }
    },
    useTemplate(template) {
      const { patient, usualPain, returnKeys } = store.getState().draft;
      put({ ...template, patient, usualPain, returnKeys });
    },
    setPractice(practice) {
      store.setState({ practice });
      settle(world.write('practice', JSON.stringify(practice)));
    },
    save() {
      const { plan } = store.getState();
      if (plan === null) return;
      world.saveFile(`overfoot-plan-${plan.createdAt.slice(0, 10)}.json`, JSON.stringify(plan, null, 2));
      handedOut();
    },
    handedOut,
    dismissProblem: () => store.setState({ problem: null }),
  };
}

/** Which knee is noted as painful of whom the draft is for; null where nothing is noted. */
export function painfulSideOf({
  draft,
  patients,
}: Pick<PlanWritingState, 'draft' | 'patients'>): PainfulSide | null {
  const name = plainName(draft.patient);
  return patients.find(({ pseudonym }) => pseudonym === name)?.painfulSide ?? null;
}

/** The rest of a plan that was handed out changes with its draft alone. */
function haveSameThresholds(one: PlanDocument | null, other: PlanDocument | null): boolean {
  if (one === null || other === null) return true;
  return areSameThresholds(one.thresholds, other.thresholds);
}

function namesOf(patients: readonly KnownPatient[]): string[] {
  return patients.map(({ pseudonym }) => pseudonym);
}
