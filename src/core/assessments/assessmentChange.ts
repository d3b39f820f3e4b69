import { changeBeyondError, type Change } from '../statistics/detectableChange';
import type { Assessment } from './assessment';

export type AssessmentChange =
  | { kind: 'no-error-known'; difference: number }
  | { kind: 'other-rater' }
  | { kind: 'other-protocol'; fixed: readonly string[] }
  | ({ kind: 'told'; detectable: number } & Change);

/**
 * Whether two results of the same leg differ by more than error, where an error is known.
 *
 * @param alike  whether the same person rated, and whether what the protocol fixes was the same
 * @param ownSem  of this practice's repeats, in the test's unit; null: the published error, if there is one
 * Sign:    'higher' = a larger result; `better` of the test says whether that is more able
 */
export function assessmentChange(
  { error, protocol }: Assessment,
  earlier: number,
  later: number,
  alike: { rater: boolean; protocol: boolean },
  ownSem: number | null = null,
): AssessmentChange {
  if (!alike.protocol) return { kind: 'other-protocol', fixed: protocol.fixed };
  if (error?.sameRaterOnly === true && !alike.rater) return { kind: 'other-rater' };
  const detectable = ownSem === null ? (error?.detectable ?? null) : 1.96 * Math.SQRT2 * ownSem;
  if (detectable === null) return { kind: 'no-error-known', difference: later - earlier };
  return { kind: 'told', detectable, ...changeBeyondError(earlier, later, detectable) };
}
