import type { HoldStage, RepetitionStage } from '#core/exercises/stage';
import type { NextStep } from '#core/programme/nextStep';
import { exerciseName } from './exerciseWords';

/** What a proposal comes to in an item's stages, as a sentence for the therapist, who decides. */
export function nextStepSentence(step: NextStep): string {
  switch (step.kind) {
    case 'hold':
      return 'No exercise until the therapist has spoken to the patient.';
    case 'no-easier':
      return 'This is the easiest stage. The rules name no next one.';
    case 'no-harder':
      return 'This is the hardest stage. The rules name no next one.';
    case 'other-exercise':
      return `Proposed: ${exerciseName(step.exercise).toLowerCase()}. ${step.stage.words}${beginning(step.stage)}`;
    case 'other-stage':
      return `Proposed: stage ${step.number} of ${step.of}. ${step.stage.words}${beginning(step.stage)}`;
    case 'same': {
      const rest = step.restDayFirst ? 'a day of rest, then ' : '';
      const repetitions = step.repetitions === null ? '' : ` with ${step.repetitions} repetitions`;
      return `Proposed: ${rest}stage ${step.number} of ${step.of} again${repetitions}. ${step.stage.words}`;
    }
  }
}

function beginning(stage: RepetitionStage | HoldStage): string {
  return 'start' in stage ? ` It begins with ${stage.start} repetitions.` : '';
}
