import type { ProposalKind } from '#core/programme/proposal';
import type { Decision } from '#documents/patient/patientDocument';
import { dayWords } from '#words/dateWords';

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
