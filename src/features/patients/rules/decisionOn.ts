import type { Decision } from '#documents/patient/patientDocument';
import type { PlanDocument } from '#documents/plan/planDocument';
import { datedDay } from '#words/dayName';
import { proposalSentence } from '#words/proposalSentence';
import type { ItemProposal } from './proposals';

/** What a proposal rests on, as it is shown. */
export function reasonSentences({ proposal }: Pick<ItemProposal, 'proposal'>): string[] {
  return proposal.reasons.map((reason) => proposalSentence(reason, datedDay));
}

/** A decision on what is proposed for an item of a plan, with what it rests on. */
export function decisionOn(
  plan: Pick<PlanDocument, 'id'>,
  proposed: Pick<ItemProposal, 'index' | 'item' | 'proposal'>,
  signed: Pick<Decision, 'id' | 'at' | 'by' | 'answer' | 'why'>,
): Decision {
  const { index, item, proposal } = proposed;
  return {
    ...signed,
    planId: plan.id,
    item: index,
    task: item.task,
    proposal: proposal.proposal,
    repetitions: proposal.repetitions ?? null,
    reasons: reasonSentences(proposed),
  };
}
