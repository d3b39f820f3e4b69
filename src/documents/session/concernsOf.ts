import type { SignId } from '#core/safety/signs';
import type { EndReason, SessionDocument } from './sessionDocument';

/** What a person said of their body in a session, and what somebody has to look at before it is settled. */
export type Concern =
  /** Warning signs, before anything was done. */
  | { kind: 'signs'; signs: SignId[] }
  | { kind: 'stopped'; reason: Extract<EndReason, 'gave-way' | 'locked' | 'dizzy'> }
  | { kind: 'fell' }
  /** Pain above the limit: the most of it; or a stop because of pain. `score` is null where none was given. */
  | { kind: 'pain'; score: number | null };

type Said = Pick<
  SessionDocument,
  'check' | 'endedBecause' | 'painLimit' | 'painBefore' | 'painAfter' | 'wentOnAbove' | 'sets'
>;

/** The concerns of a session, the gravest first; none where nothing of that kind was said. */
export function concernsOf(session: Said): Concern[] {
  const { check, endedBecause } = session;
  const { reason = null, fell = null } = endedBecause ?? {};
  const concerns: Concern[] = [];
  if (check !== null && check.signs.length > 0) concerns.push({ kind: 'signs', signs: check.signs });
  if (reason === 'gave-way' || reason === 'locked' || reason === 'dizzy')
    concerns.push({ kind: 'stopped', reason });
  if (fell === true) concerns.push({ kind: 'fell' });
  const score = mostPain(session);
  const isAbove = score !== null && session.painLimit !== null && score > session.painLimit;
  if (isAbove || reason === 'pain') concerns.push({ kind: 'pain', score });
  return concerns;
}

/** The most pain that was said, corrected or not; null where none was. */
function mostPain({ painBefore, painAfter, sets, wentOnAbove }: Said): number | null {
  const scores = [
    painBefore,
    painAfter,
    ...sets.map(({ painDuring }) => painDuring),
    ...wentOnAbove.map(({ score }) => score),
  ].filter((score) => score !== null);
  return scores.length === 0 ? null : Math.max(...scores);
}

/** Whether nothing is done until somebody has seen it: everything but pain, of which the plan says what to do. */
export function isHolding({ kind }: Concern): boolean {
  return kind !== 'pain';
}
