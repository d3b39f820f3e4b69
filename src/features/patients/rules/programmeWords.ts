import type { ProposalKind } from '#core/programme/proposal';
import type { PracticeStages } from '#documents/library/stages';
import type { Decision, PatientDocument } from '#documents/patient/patientDocument';
import { itemName } from '#documents/plan/itemName';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { dayWords } from '#words/dateWords';
import { datedDay } from '#words/dayName';
import { nextStepSentence } from '#words/nextStepSentence';
import { proposalSentence } from '#words/proposalSentence';
import { itemProposals, type ItemProposal } from './proposals';

/** A proposal as a question or an answer, in a few words. */
export const proposalWords: Record<ProposalKind, string> = {
  'step-up': 'Step up?',
  more: 'More repetitions?',
  stay: 'Stay at this stage',
  repeat: 'A day of rest, then the same again',
  'step-down': 'Step down?',
  hold: 'Hold',
};

/** 'AB, Fri 3 Apr 2026: accepted “Step up?”'. */
export function decisionSentence({ at, by, proposal, answer, why }: Decision): string {
  const because = why === '' ? '' : `: ${why}`;
  return `${by}, ${dayWords(at)}: ${answer} “${proposalWords[proposal]}”${because}`;
}

/** What a proposal comes to in the plan, as a sentence; empty where nothing changes. */
export function nextWords({ item, proposal, next }: ItemProposal): string {
  if (next !== null) return nextStepSentence(next);
  switch (proposal.proposal) {
    case 'more':
      return `From ${item.repetitions} to ${proposal.repetitions}.`;
    case 'step-up':
    case 'step-down':
      return 'The plan names no stage of this exercise, so the rules name no next one.';
    default:
      return '';
  }
}

/** More of them are on the patient's page. */
const mostReasons = 2;

/** Each item's proposal in a line, with what it rests on, and what was decided on it last. */
export function proposedLines(
  plan: PlanDocument,
  sessions: readonly ListedSession[],
  { thresholds, decisions }: Pick<PatientDocument, 'thresholds' | 'decisions'>,
  own: PracticeStages = {},
): string[] {
  return itemProposals(plan, sessions, thresholds, own).map((proposed) => {
    const { index, item, proposal } = proposed;
    const decision = decisions.findLast((one) => one.planId === plan.id && one.item === index);
    // What was decided before the newest session was decided on something else.
    const isDecided =
      decision?.proposal === proposal.proposal && sessions.every(({ startedAt }) => startedAt <= decision.at);
    const asked = proposalWords[proposal.proposal];
    const parts = [
      `${itemName(item)}: “${asked}${asked.endsWith('?') ? '' : '.'}”`,
      nextWords(proposed),
      ...proposal.reasons.slice(0, mostReasons).map((reason) => proposalSentence(reason, datedDay)),
      isDecided ? `${decisionSentence(decision)}.` : '',
    ];
    return parts.filter((part) => part !== '').join(' ');
  });
}
