import type { Proposal } from './proposal';
import { usualThresholds, type ProposalThresholds } from './proposalThresholds';
import { propose } from './propose';
import type { StageCourse } from './stageCourse';

/**
 * What to do next where the day after the newest session is not known yet: it is asked about when the next one begins,
 * so by `propose` alone nothing would ever step up between two sessions.
 *
 * Where that answer is all that is missing, what the sessions before say counts, and the answer is still named among
 * the reasons. The newest session is not left out: a finding in it, its quality or its effort decide as always.
 *
 * @throws  RangeError as `propose`
 * Source:  our choice, no source
 */
export function proposeSoFar(
  course: StageCourse,
  thresholds: ProposalThresholds = usualThresholds,
): Proposal {
  const proposed = propose(course, thresholds);
  const [reason, ...others] = proposed.reasons;
  const newest = course.sessions.at(-1);
  const isAllThatIsMissing =
    proposed.proposal === 'stay' &&
    others.length === 0 &&
    reason?.kind === 'next-day-unknown' &&
    reason.day === newest?.day;
  if (!isAllThatIsMissing) return proposed;
  const before = propose({ ...course, sessions: course.sessions.slice(0, -1) }, thresholds);
  const isStep = before.proposal === 'step-up' || isMore(before, newest!.repetitions);
  return isStep ? { ...before, reasons: [...before.reasons, reason!] } : proposed;
}

/** Not where the newest session has as many already. */
function isMore({ proposal, repetitions }: Proposal, newest: number): boolean {
  return proposal === 'more' && repetitions !== undefined && repetitions > newest;
}
