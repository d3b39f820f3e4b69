import { greatest } from 'd3-array';
import type { SessionReason } from './proposal';
import type { ProposalThresholds } from './proposalThresholds';
import type { ItemRules, StageSession } from './stageCourse';

/** How much a finding weighs: nothing is added; the same again; no more before therapist and patient have spoken. */
export const severities = ['caution', 'poor', 'stop'] as const;
export type Severity = (typeof severities)[number];

export interface SessionFinding {
  severity: Severity;
  reason: SessionReason;
}

/**
 * What speaks against more in a session; nothing where it went well. A next day that was not answered is no finding.
 *
 * Pain before the session counts against the limits as pain during it does: a session that began above the limit went
 * no better for a knee that eased.
 */
export function findInSession(
  session: StageSession,
  { limit, usualPain, swellingRule }: ItemRules,
  thresholds: ProposalThresholds,
): SessionFinding[] {
  const { day, painBefore, painDuring, worstNextDay, swelling, event, doneShare } = session;
  const findings: SessionFinding[] = [];
  const find = (severity: Severity, reason: SessionReason) => findings.push({ severity, reason });

  const before = { time: 'before', pain: painBefore } as const;
  const during = { time: 'during', pain: painDuring } as const;
  const nextDay = worstNextDay === null ? [] : [{ time: 'next-day', pain: worstNextDay } as const];
  const inSession = highest([before, during]);
  const ever = highest([inSession, ...nextDay]);

  if (event !== null) find('stop', { kind: 'event', day, event });
  if (swelling === 'more' || swelling === 'much-more') {
    const isStop = swelling === 'much-more' || swellingRule === 'contact';
    find(isStop ? 'stop' : 'poor', { kind: 'swollen', day, swelling, rule: swellingRule });
  }
  if (ever.pain >= thresholds.strongPain)
    find('stop', { kind: 'strong-pain', day, ...ever, from: thresholds.strongPain });
  if (inSession.pain > limit) find('poor', { kind: 'above-limit', day, ...inSession, limit });
  if (rise(usualPain, inSession.pain) > thresholds.aboveUsual)
    find('poor', {
      kind: 'above-usual',
      day,
      ...inSession,
      usual: usualPain,
      allowed: thresholds.aboveUsual,
    });
  for (const score of nextDay) {
    const risen = rise(painBefore, score.pain);
    if (risen >= thresholds.cautionNextDayRise)
      find(risen >= thresholds.nextDayRise ? 'poor' : 'caution', {
        kind: 'pain-risen',
        day,
        ...score,
        before: painBefore,
      });
  }
  if (rise(painBefore, painDuring) >= thresholds.cautionRiseDuring)
    find('caution', { kind: 'pain-risen', day, ...during, before: painBefore });
  if (session.driftInward) find('caution', { kind: 'drift-inward', day });
  if (doneShare < thresholds.leastDoneShare)
    find('caution', { kind: 'not-all-done', day, doneShare, least: thresholds.leastDoneShare });
  return findings;
}

/** The first of those with the most pain. */
function highest<Score extends { pain: number }>(scores: readonly Score[]): Score {
  return greatest(scores, ({ pain }) => pain)!;
}

/** By how much pain rose; below 0 where it eased. Without it, 4.1 less 1.1 would be a little less than 3. */
function rise(from: number, to: number): number {
  return Number((to - from).toFixed(6));
}
