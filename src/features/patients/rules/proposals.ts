import { findExercise } from '#core/exercises/exercises';
import { nextStep, type NextStep } from '#core/programme/nextStep';
import type { Proposal } from '#core/programme/proposal';
import { thresholdsOf, type OwnThresholds } from '#core/programme/proposalThresholds';
import { proposeSoFar } from '#core/programme/proposeSoFar';
import { stagesFor, type PracticeStages } from '#documents/library/stages';
import { ownUpTo } from '#documents/plan/itemProgress';
import type { PlanDocument, RepetitionItem } from '#documents/plan/planDocument';
import { newItem, nextPlanOf, type PlanDraft } from '#documents/plan/planDraft';
import { stageCourseOf } from '#documents/programme/stageCourseOf';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { stagedSessions } from './stagedSessions';

/** What the rules propose for an item of the plan in force. */
export interface ItemProposal {
  /** In the plan. */
  index: number;
  item: RepetitionItem;
  proposal: Proposal;
  /** What it comes to; null where a stage would change, but the item's is not known here. */
  next: NextStep | null;
  /** Done at this stage. */
  sessions: number;
}

/**
 * For each item whose repetitions are counted; a hold is stepped by hand.
 *
 * @param own  the practice's stages, where they are not the program's
 */
export function itemProposals(
  plan: PlanDocument,
  sessions: readonly ListedSession[],
  thresholds: OwnThresholds,
  own: PracticeStages = {},
): ItemProposal[] {
  const staged = stagedSessions(sessions);
  return plan.items.flatMap((item, index) => {
    if (item.kind !== 'repetitions') return [];
    const course = stageCourseOf(plan, item, staged);
    const proposal = proposeSoFar(course, thresholdsOf(thresholds));
    const stage = stagesFor(item.task, own).find(({ id }) => id === item.stage);
    const next =
      stage === undefined
        ? withoutStage(proposal)
        : nextStep(proposal, { exercise: item.task, stage: stage.id }, (id) => stagesFor(id, own));
    return [
      {
        index,
        item,
        proposal,
        next,
        sessions: course.sessions.length,
      },
    ];
  });
}

function withoutStage({ proposal }: Proposal): NextStep | null {
  return proposal === 'hold' ? { kind: 'hold' } : null;
}

/** Whether accepting a proposal makes another plan. */
export function changesPlan({ proposal, next }: Pick<ItemProposal, 'proposal' | 'next'>): boolean {
  return proposal.proposal === 'more' || next?.kind === 'other-stage' || next?.kind === 'other-exercise';
}

/** The plan as a draft in which one item is as proposed, to be looked through and handed out. */
export function draftOf(plan: PlanDocument, { index, item, proposal, next }: ItemProposal): PlanDraft {
  const items = plan.items.map((one, at) => (at === index ? proposedItem(item, proposal, next) : one));
  return { ...nextPlanOf(plan), note: plan.note, items };
}

function proposedItem(
  item: RepetitionItem,
  proposal: Proposal,
  next: NextStep | null,
): PlanDocument['items'][number] {
  if (next?.kind === 'other-stage') {
    const { stage } = next;
    const repetitions = 'start' in stage ? stage.start : item.repetitions;
    const { seatHeightCm = item.seatHeightCm, stepHeightCm = item.stepHeightCm } = stage;
    const { bendDeg = item.bendDeg, support = item.support, load = item.load } = stage;
    return {
      ...item,
      stage: stage.id,
      repetitions,
      seatHeightCm,
      stepHeightCm,
      bendDeg,
      support,
      load,
      upTo: ownUpTo(item.task, stage),
    };
  }
  if (next?.kind === 'other-exercise') {
    const { stage } = next;
    const made = { ...newItem(findExercise(next.exercise).id), sides: item.sides, stage: stage.id };
    if (made.kind === 'hold') return made;
    return {
      ...made,
      repetitions: 'start' in stage ? stage.start : made.repetitions,
      seatHeightCm: stage.seatHeightCm ?? null,
      stepHeightCm: stage.stepHeightCm ?? null,
      bendDeg: stage.bendDeg ?? null,
      support: stage.support ?? null,
      load: stage.load ?? null,
      upTo: ownUpTo(made.task, stage),
    };
  }
  return { ...item, repetitions: proposal.repetitions ?? item.repetitions };
}
