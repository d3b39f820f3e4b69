import { mostAboveUsual, strongPainFrom } from '#core/safety/painScale';
import { message } from '#words/messages/message';
import { freePainLimit } from './freeRecording';
import type { PlanDocument } from './planDocument';

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
    beyondPainLimit: plan?.beyondPainLimit ?? message('caution.no-plan'),
    ifItGivesWay: ifItGivesWay(plan),
    from: plan === null ? 'program' : 'therapist',
    stop: [
      message('caution.pain', { limit: painLimit }),
      message('caution.stop-gives-way'),
      message('caution.stop-locks'),
      message('caution.stop-swells'),
      message('caution.stop-dizzy'),
    ],
    defer: message('caution.defer'),
  };
}

function ifItGivesWay(plan: PainRules | null): string {
  return plan === null || plan.ifItGivesWay.trim() === '' ? message('caution.gives-way') : plan.ifItGivesWay;
}

/** Words of a plan, so that it is clear whose they are. */
export function saidBy({ from }: Pick<Cautions, 'from'>, words: string): string {
  return from === 'therapist' ? message('caution.therapist-says', { words }) : words;
}

/** When pain is asked for: before anything is done, after each set, and after all of them. */
export type PainMoment = 'before' | 'during' | 'after';

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
  return score <= painLimit ? null : message(`pain.too-much.${when}`, { score, limit: painLimit });
}

/** Whether the person may go on above the limit if they say that they were told to. */
export function mayGoOnWith(score: number, { mostAllowed }: Pick<Cautions, 'mostAllowed'>): boolean {
  return mostAllowed !== null && score <= mostAllowed;
}
