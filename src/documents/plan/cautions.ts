import { freePainLimit } from './freeRecording';
import type { PlanDocument } from './planDocument';

/** What is said about pain in a recording without a plan. */
const withoutPlan =
  'Stop, rest, and ask your therapist or doctor before you continue. Only they can say how much pain is right for you.';

/** When to stop, and what to do then. */
export interface Cautions {
  painLimit: number;
  beyondPainLimit: string;
  /** Reasons to stop at once, one sentence each. */
  stop: readonly string[];
  /** Who decides. */
  defer: string;
}

/** The cautions of a plan; null for a recording without one. Common practice, no source, but for the plan's own. */
export function cautionsOf(plan: Pick<PlanDocument, 'painLimit' | 'beyondPainLimit'> | null): Cautions {
  const { painLimit, beyondPainLimit } = plan ?? {
    painLimit: freePainLimit,
    beyondPainLimit: withoutPlan,
  };
  return {
    painLimit,
    beyondPainLimit,
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

function painSentence(painLimit: number): string {
  if (painLimit === 0) return 'Stop at any pain.';
  if (painLimit === 10) return 'Stop when the pain is more than you want to bear.';
  return `Stop when the pain goes above ${painLimit} out of 10.`;
}

/**
 * What to do about a pain score.
 *
 * @param score  0 to 10
 * @returns null where it is within the limit
 */
export function painAdvice(score: number, { painLimit, beyondPainLimit }: Cautions): string | null {
  if (score <= painLimit) return null;
  return `Your pain is ${score} out of 10, above the limit of ${painLimit}. Do not exercise now. ${beyondPainLimit}`;
}
