import { defaultLimits, type Limits } from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';
import type { LimitsSet } from '#documents/recording/reviewSchema';

/** Where limits come from. */
export type LimitsOrigin =
  | { kind: 'set'; by: string; at: string }
  /** Set in another of the patient's sessions, done at `takenFrom`. */
  | { kind: 'taken-over'; by: string; at: string; takenFrom: string }
  | { kind: 'plan' }
  | { kind: 'default' }
  /** The recording came with them, and nothing here says who set them. */
  | { kind: 'session' };

/**
 * @param lastSet  the last ones set by hand; undefined where nobody has set any
 * @param planned  those of the plan that the session followed; null where it is not known
 */
export function limitsOrigin(
  present: Limits,
  lastSet: LimitsSet | undefined,
  planned: Limits | null,
): LimitsOrigin {
  if (lastSet !== undefined) {
    const { by, at, takenFrom } = lastSet;
    return takenFrom === undefined ? { kind: 'set', by, at } : { kind: 'taken-over', by, at, takenFrom };
  }
  if (planned !== null && sameLimits(planned, present)) return { kind: 'plan' };
  return { kind: sameLimits(defaultLimits, present) ? 'default' : 'session' };
}
