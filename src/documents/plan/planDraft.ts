import { findExercise, type ExerciseId } from '#core/exercises/exercises';
import { defaultLimits } from '#core/protocol/limits';
import { capitalised } from '#words/capitalised';
import { message } from '#words/messages/message';
import { plainName } from '../schema/plainName';
import { itemName } from './itemName';
import { holdWithoutProgress, planWithoutProgress, withoutProgress } from './itemProgress';
import { planVersion, type PlanDocument, type PlanItem } from './planDocument';
import { readPlan } from './readPlan';
import { onItsOwn } from './senseSentence';

/** A plan while it is being written: it may not make sense yet. */
export type PlanDraft = Omit<PlanDocument, 'format' | 'version' | 'id' | 'createdAt'>;

/** What pain means while exercising before the therapist says otherwise; common practice, no source. */
const firstPainLimit = 3;

/** An empty plan. */
export function newDraft(): PlanDraft {
  return {
    note: '',
    patient: '',
    items: [],
    footwear: 'either',
    painLimit: firstPainLimit,
    usualPain: null,
    mayGoOnAbove: false,
    beyondPainLimit: message('caution.first-beyond-limit'),
    ifItGivesWay: message('caution.first-gives-way'),
    howOften: '',
    perWeek: null,
    reviewDate: null,
    words: '',
    videoWish: null,
    returnKeys: [],
    language: 'en',
    ...planWithoutProgress,
  };
}

/** The same patient's next plan: everything from this one except when it is reviewed, and its note. */
export function nextPlanOf(plan: PlanDocument): PlanDraft {
  const { reviewDate, note } = newDraft();
  const { format, version, id, createdAt, ...draft } = plan;
  return { ...draft, reviewDate, note };
}

/**
 * What a plan has in common with other patients' plans: everything except who it is for and what was agreed with them
 * alone, which leg of one each task is for, the words to them, and who can open what comes back.
 */
export function templateOf(draft: PlanDraft): PlanDraft {
  const { patient, usualPain, mayGoOnAbove, reviewDate, note, words, thresholds, returnKeys } = newDraft();
  const items = draft.items.map((item) => (item.sides.length > 1 ? item : { ...item, sides: [] }));
  return {
    ...draft,
    items,
    patient,
    usualPain,
    mayGoOnAbove,
    reviewDate,
    note,
    words,
    thresholds,
    returnKeys,
  };
}

/** A task or hold as the library doses it; for which leg is still to be chosen. */
export function newItem(id: ExerciseId): PlanItem {
  const exercise = findExercise(id);
  const { sets, restSeconds } = exercise.dose;
  const dose = { sides: [], sets, restSeconds };
  if (exercise.kind === 'hold') {
    const { count, seconds } = exercise.dose.holds;
    return {
      kind: 'hold',
      task: exercise.id,
      ...dose,
      holds: count,
      holdSeconds: seconds,
      ...holdWithoutProgress,
    };
  }
  return {
    kind: 'repetitions',
    task: exercise.id,
    ...dose,
    repetitions: exercise.dose.repetitions,
    tempo: null,
    seatHeightCm: null,
    feedback: 'only-outside',
    limits: { ...defaultLimits },
    ...withoutProgress,
  };
}

/** A draft as a plan, or what it still lacks, what makes no sense about it, or where it is damaged, as a sentence. */
export type FinishedDraft =
  { kind: 'plan'; plan: PlanDocument } | { kind: 'incomplete' | 'senseless' | 'damaged'; sentence: string };

/**
 * Turns a draft into a plan, if it makes sense.
 *
 * @param createdAt  ISO 8601, UTC
 */
export function finishDraft(draft: PlanDraft, id: string, createdAt: string): FinishedDraft {
  const lacking = lackingSentence(draft);
  if (lacking !== null) return { kind: 'incomplete', sentence: lacking };
  const patient = plainName(draft.patient);
  const data = { format: 'overfoot-plan', version: planVersion, id, createdAt, ...draft, patient };
  const read = readPlan(data, onItsOwn);
  if ('plan' in read) return { kind: 'plan', plan: read.plan };
  if ('damaged' in read) return { kind: 'damaged', sentence: `There is an error at ${read.damaged}.` };
  return { kind: 'senseless', sentence: `${capitalised(read.senseless)}.` };
}

function lackingSentence({ patient, items, beyondPainLimit }: PlanDraft): string | null {
  if (plainName(patient) === '') return 'Give the patient a pseudonym; never their name.';
  if (items.length === 0) return 'Add at least one task.';
  if (beyondPainLimit.trim() === '')
    return 'Say what the patient should do when the pain goes above the limit.';
  const open = items.findIndex(({ sides }) => Array.isArray(sides) && sides.length === 0);
  if (open >= 0) return `Choose the side of task ${open + 1} (${itemName(items[open]!)}).`;
  return null;
}
