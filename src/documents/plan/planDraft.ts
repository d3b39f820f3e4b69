import { findExercise, type ExerciseId } from '#core/exercises/exercises';
import { defaultLimits } from '#core/protocol/limits';
import { capitalised } from '#words/capitalised';
import { planVersion, type PlanDocument, type PlanItem } from './planDocument';
import { readPlan } from './readPlan';
import { onItsOwn } from './senseSentence';

/** A plan while it is written: it may make no sense yet. */
export type PlanDraft = Omit<PlanDocument, 'format' | 'version' | 'id' | 'createdAt'>;

/** What pain means while exercising before the therapist says otherwise; common practice, no source. */
const usualPainLimit = 3;

/** An empty plan. */
export function newDraft(): PlanDraft {
  return {
    note: '',
    patient: '',
    items: [],
    footwear: 'either',
    painLimit: usualPainLimit,
    beyondPainLimit: 'Stop for today, rest the leg, and tell me before the next session.',
    howOften: '',
    reviewDate: null,
    words: '',
    returnKey: null,
  };
}

/** The next patient's plan: everything of the last one but who it is for, when it is reviewed, and its note. */
export function copyOf(plan: PlanDocument): PlanDraft {
  const { patient, reviewDate, note } = newDraft();
  const { format, version, id, createdAt, ...draft } = plan;
  return { ...draft, patient, reviewDate, note };
}

/** A task or hold as the library doses it, for one leg. */
export function newItem(id: ExerciseId): PlanItem {
  const exercise = findExercise(id);
  const { sets, restSeconds } = exercise.dose;
  const dose = { sides: ['right' as const], sets, restSeconds };
  if (exercise.kind === 'hold') {
    const { count, seconds } = exercise.dose.holds;
    return { kind: 'hold', task: exercise.id, ...dose, holds: count, holdSeconds: seconds };
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
  };
}

/** A draft as a plan, or what it still lacks, what makes no sense about it, or where it is damaged, as a sentence. */
export type FinishedDraft =
  { kind: 'plan'; plan: PlanDocument } | { kind: 'incomplete' | 'senseless' | 'damaged'; sentence: string };

/**
 * Makes a plan of a draft, if it makes sense.
 *
 * @param createdAt  ISO 8601, UTC
 */
export function finishDraft(draft: PlanDraft, id: string, createdAt: string): FinishedDraft {
  const lacking = lackingSentence(draft);
  if (lacking !== null) return { kind: 'incomplete', sentence: lacking };
  const data = { format: 'overfoot-plan', version: planVersion, id, createdAt, ...draft };
  const read = readPlan(data, onItsOwn);
  if ('plan' in read) return { kind: 'plan', plan: read.plan };
  if ('damaged' in read)
    return { kind: 'damaged', sentence: `Something is not as it should be at ${read.damaged}.` };
  return { kind: 'senseless', sentence: `${capitalised(read.senseless)}.` };
}

function lackingSentence({ patient, items, beyondPainLimit }: PlanDraft): string | null {
  if (patient.trim() === '') return 'Give the patient a pseudonym; never their name.';
  if (items.length === 0) return 'Add at least one task.';
  if (beyondPainLimit.trim() === '')
    return 'Say what the patient should do when the pain goes above the limit.';
  return null;
}
