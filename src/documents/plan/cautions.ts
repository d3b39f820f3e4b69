import { mostAboveUsual, strongPainFrom } from '#core/safety/painScale';
import { freePainLimit } from './freeRecording';
import type { PlanDocument } from './planDocument';

/** What is said about pain in a recording without a plan. */
const withoutPlan =
  'Rest, and ask your therapist or doctor before you continue. Only they can say how much pain is right for you.';

/** What a plan says about pain and about a knee that gives way. */
export type PainRules = Pick<
  PlanDocument,
  'painLimit' | 'usualPain' | 'mayGoOnAbove' | 'beyondPainLimit' | 'ifItGivesWay'
>;

/** When to stop, and what to do then. */
export interface Cautions {
  /** The least of: the plan's limit, the usual pain and 2 more, and what is always warned of. */
  painLimit: number;
  /** The most pain with which the person may go on above the limit; null where they may not. */
  mostAllowed: number | null;
  beyondPainLimit: string;
  /** What to do after the knee gave way, locked or got stuck. */
  ifItGivesWay: string;
  /** Who says both of them. */
  from: 'therapist' | 'program';
  /** Reasons to stop at once, one sentence each. */
  stop: readonly string[];
  /** Who decides. */
  defer: string;
}

/** The cautions of a plan; null for a recording without one. Common practice, no source, but for the plan's own. */
export function cautionsOf(plan: PainRules | null): Cautions {
  const usual = plan?.usualPain ?? null;
  const ceiling = Math.min(strongPainFrom - 1, usual === null ? Infinity : usual + mostAboveUsual);
  const painLimit = Math.min(plan?.painLimit ?? freePainLimit, ceiling);
  return {
    painLimit,
    mostAllowed: plan?.mayGoOnAbove === true && ceiling > painLimit ? ceiling : null,
    beyondPainLimit: plan?.beyondPainLimit ?? withoutPlan,
    ifItGivesWay: ifItGivesWay(plan),
    from: plan === null ? 'program' : 'therapist',
    stop: [
      painSentence(painLimit),
      'Stop when the knee gives way.',
      'Stop when the knee locks or gets stuck.',
      'Stop when the knee swells, and do not continue until your therapist or doctor has seen it.',
      'Stop when you feel dizzy or unsteady, and sit down.',
    ],
    defer:
      'What your therapist or doctor told you comes before anything said here. This program measures how the knee ' +
      'stands over the foot; it does not examine you.',
  };
}

const seenFirst = 'Do not exercise again until your therapist or doctor has seen it.';

function ifItGivesWay(plan: PainRules | null): string {
  return plan === null || plan.ifItGivesWay.trim() === '' ? seenFirst : plan.ifItGivesWay;
}

function painSentence(painLimit: number): string {
  if (painLimit === 0) return 'Stop at any pain.';
  return `Stop when the pain goes above ${painLimit} out of 10.`;
}

/** Words of a plan, so that it is clear whose they are. */
export function saidBy({ from }: Pick<Cautions, 'from'>, words: string): string {
  return from === 'therapist' ? `Your therapist says: ${words}` : words;
}

/** When pain is asked for: before anything is done, after each set, and after all of them. */
export type PainMoment = 'before' | 'during' | 'after';

const painWords: Record<PainMoment, (score: number, limit: number) => string> = {
  before: (score, limit) =>
    `It hurts ${score} out of 10 now, which is above ${limit}. Do not exercise today.`,
  during: (score, limit) =>
    `It hurt ${score} out of 10 in this set, which is above ${limit}. Stop here for today.`,
  after: (score, limit) =>
    `It hurts ${score} out of 10 now, which is above ${limit}. That was too much for today.`,
};

/**
 * What to do about a pain score, without what the plan says.
 *
 * @param score  0 to 10
 * @returns null where it is within the limit
 */
export function painAdvice(
  when: PainMoment,
  score: number,
  { painLimit }: Pick<Cautions, 'painLimit'>,
): string | null {
  return score <= painLimit ? null : painWords[when](score, painLimit);
}

/** Whether the person may go on above the limit if they say that they were told to. */
export function mayGoOnWith(score: number, { mostAllowed }: Pick<Cautions, 'mostAllowed'>): boolean {
  return mostAllowed !== null && score <= mostAllowed;
}
