import { pairs } from 'd3-array';
import { requireFinite } from '../statistics/requireFinite';
import { findInSession, severities, type SessionFinding, type Severity } from './findInSession';
import type { Proposal, ProposalReason, QualityFigures } from './proposal';
import { usualThresholds, type ProposalThresholds } from './proposalThresholds';
import type { StageCourse, StageSession } from './stageCourse';

/**
 * What to do next with an item, from how its sessions at the present stage went. The first rule that applies decides:
 *
 * 1. the last session has a finding to stop for: hold
 * 2. the last one is poor: step down if the one before was poor as well, or worse; else repeat
 * 3. a reason to stay, of which all are given: too few sessions or days, a question that was not answered, a finding
 *    in one of the last three, quality that was not measured or not good, much effort in the last
 * 4. else more repetitions until the stage has as many as it asks for, then a step up
 *
 * More pain during a session or on the next day never makes a bolder proposal, and neither does as much more of it
 * before, during and after.
 *
 * @param thresholds  where the lines are drawn; each says its source
 * @returns  never more repetitions than the stage goes up to
 * Missing: an unanswered next day is a reason to stay, never a 0; shares in line of a session with too few measured
 *   repetitions are not looked at
 * @throws  RangeError where a number is not finite, or where sessions are not from the oldest to the newest
 * Source:  soreness and effusion guidelines after Adams 2012 (PMC6044585, table 5) for the steps: advance, repeat after
 *   a day off, drop a step, hold. Looking at three sessions, and what of them: our choice, no source
 */
export function propose(course: StageCourse, thresholds: ProposalThresholds = usualThresholds): Proposal {
  requireCourse(course);
  const found = course.sessions.map((session) => findInSession(session, course, thresholds));
  const [last = [], beforeLast = []] = found.slice(-2).reverse();
  const stops = from('stop', last);
  if (stops.length > 0) return { proposal: 'hold', reasons: reasonsOf(stops) };
  const [poor, poorBefore] = [from('poor', last), from('poor', beforeLast)];
  if (poor.length > 0)
    return {
      proposal: poorBefore.length > 0 ? 'step-down' : 'repeat',
      reasons: reasonsOf([...poor, ...poorBefore]),
    };

  const recent = course.sessions.slice(-thresholds.sessions);
  const reasons = [
    ...timeReasons(recent, thresholds),
    ...recent.flatMap(({ day, worstNextDay }) =>
      worstNextDay === null ? [{ kind: 'next-day-unknown', day } as const] : [],
    ),
    ...recent.flatMap(({ day, unanswered = [] }) =>
      unanswered.map((what) => ({ kind: 'unanswered', day, what }) as const),
    ),
    ...reasonsOf(found.slice(-thresholds.sessions).flat()),
    ...qualityReasons(recent, thresholds),
    ...effortReasons(recent, thresholds),
  ];
  if (reasons.length > 0) return { proposal: 'stay', reasons };
  return goOn(course, recent, thresholds);
}

function requireCourse({ limit, usualPain, upTo, sessions }: StageCourse): void {
  const numbers = sessions.flatMap((session) =>
    Object.values(session).filter((value) => typeof value === 'number'),
  );
  requireFinite([limit, usualPain, upTo.min, upTo.max, ...numbers]);
  for (const [one, next] of pairs(sessions))
    if (next.day < one.day)
      throw new RangeError(
        `Sessions go from the oldest to the newest, got day ${next.day} after ${one.day}.`,
      );
}

/** Those that weigh this much at least. */
function from(least: Severity, findings: readonly SessionFinding[]): SessionFinding[] {
  return findings.filter(({ severity }) => severities.indexOf(severity) >= severities.indexOf(least));
}

function reasonsOf(findings: readonly SessionFinding[]): ProposalReason[] {
  return findings.map(({ reason }) => reason);
}

function timeReasons(recent: readonly StageSession[], thresholds: ProposalThresholds): ProposalReason[] {
  const sessions = recent.length;
  if (sessions < thresholds.sessions)
    return [{ kind: 'few-sessions', sessions, needed: thresholds.sessions }];
  const days = recent.at(-1)!.day - recent[0]!.day;
  return days < thresholds.leastDays
    ? [{ kind: 'few-days', sessions, days, needed: thresholds.leastDays }]
    : [];
}

/** Why quality keeps an item where it is; nothing before there are enough sessions. */
function qualityReasons(recent: readonly StageSession[], thresholds: ProposalThresholds): ProposalReason[] {
  const { goodSessions, leastMeasuredShare } = thresholds;
  if (recent.length < thresholds.sessions) return [];
  const figures = qualityFigures(recent, thresholds);
  const { shares, least } = figures;
  if (shares.filter((share) => share !== null).length < goodSessions) {
    const measuredShares = recent.map(({ measuredShare }) => measuredShare);
    return [{ kind: 'not-measured', measuredShares, least: leastMeasuredShare, goodSessions }];
  }
  const isGood = shares.map(
    (share) => share !== null && share.expected >= least.expected && share.lowerTenth >= least.lowerTenth,
  );
  return isGood.at(-1)! && isGood.filter(Boolean).length >= goodSessions
    ? []
    : [{ kind: 'not-in-line', ...figures }];
}

function qualityFigures(recent: readonly StageSession[], thresholds: ProposalThresholds): QualityFigures {
  return {
    shares: recent.map(({ measuredShare, expectedShare, lowerTenthShare }) =>
      measuredShare < thresholds.leastMeasuredShare
        ? null
        : { expected: expectedShare, lowerTenth: lowerTenthShare },
    ),
    least: { expected: thresholds.leastExpectedShare, lowerTenth: thresholds.leastLowerTenthShare },
    goodSessions: thresholds.goodSessions,
  };
}

function effortReasons(
  recent: readonly StageSession[],
  { mostEffort }: ProposalThresholds,
): ProposalReason[] {
  return recent
    .slice(-1)
    .filter(({ effort }) => effort > mostEffort)
    .map(({ day, effort }) => ({ kind: 'hard', day, effort, most: mostEffort }));
}

/** More repetitions, or the next stage, with what speaks for it. */
function goOn(
  { limit, upTo }: StageCourse,
  recent: readonly StageSession[],
  thresholds: ProposalThresholds,
): Proposal {
  const { repetitions, effort } = recent.at(-1)!;
  const reasons: ProposalReason[] = [
    {
      kind: 'pain-within',
      during: recent.map(({ painDuring }) => painDuring),
      nextDay: recent.flatMap(({ worstNextDay }) => worstNextDay ?? []),
      limit,
    },
    { kind: 'in-line', ...qualityFigures(recent, thresholds) },
    { kind: 'all-done', doneShares: recent.map(({ doneShare }) => doneShare), effort },
    { kind: 'repetitions', repetitions, min: upTo.min },
  ];
  return repetitions < upTo.min
    ? {
        proposal: 'more',
        repetitions: Math.min(repetitions + thresholds.addedRepetitions, upTo.max),
        reasons,
      }
    : { proposal: 'step-up', reasons };
}
