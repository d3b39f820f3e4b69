import { findExercise, type ExerciseId } from '#core/exercises/exercises';
import { defaultLimits } from '#core/protocol/limits';
import { planVersion, type PlanDocument, type PlanItem } from './planDocument';
import { readPlan } from './readPlan';

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

/** The next patient's plan: everything of the last one but who it is for and when it is looked at again. */
export function copyOf({
  items,
  footwear,
  painLimit,
  beyondPainLimit,
  howOften,
  words,
  returnKey,
}: PlanDocument): PlanDraft {
  return { ...newDraft(), items, footwear, painLimit, beyondPainLimit, howOften, words, returnKey };
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

/**
 * A draft as a plan, or what still makes no sense about it, as a sentence.
 *
 * @param createdAt  ISO 8601, UTC
 */
export function finishDraft(
  draft: PlanDraft,
  id: string,
  createdAt: string,
): { plan: PlanDocument } | { sentence: string } {
  if (draft.patient.trim() === '') return { sentence: 'Give the patient a pseudonym; never their name.' };
  if (draft.items.length === 0) return { sentence: 'Add at least one task.' };
  if (draft.beyondPainLimit.trim() === '')
    return { sentence: 'Say what the patient should do when the pain goes above the limit.' };
  const read = readPlan({ format: 'overfoot-plan', version: planVersion, id, createdAt, ...draft });
  if ('plan' in read) return read;
  if ('damaged' in read) return { sentence: `Something is not as it should be at ${read.damaged}.` };
  const words = read.senseless.replace(/^its /, 'the ').replace(/^it /, 'the plan ');
  return { sentence: `${words.charAt(0).toUpperCase()}${words.slice(1)}.` };
}
