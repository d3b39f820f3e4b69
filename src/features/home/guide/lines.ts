import { itemName } from '#documents/plan/itemName';
import type { SetStep } from '#documents/plan/planSteps';
import { tempoSentence } from '#documents/plan/tempoSentence';
import { capitalised } from '#words/capitalised';
import type { PauseReason } from './guideState';
import { numberWord } from './numberWord';

/** Spoken lines; each can be read as it is said. */
export const lines = {
  stayPlaced: 'Come back to your place.',
  good: 'Good.',
  bends: 'Two easy bends on both legs, small and slow.',
  standing: 'Now stand still on both feet.',
  lessExact: 'Let’s continue. It will be measured less exactly.',
  maybeUnmeasured: 'Let’s continue. Some of it may not be measured.',
  placedAgain: 'Good. Let’s carry on.',
  go: 'Go.',
  uncounted: 'Please count your repetitions yourself. When you are done, come back and press “End this set”.',
  idle: 'Carry on when you are ready. To end the set, come back and press “End this set”.',
  setDone: 'Set done. Well done.',
  setEnded: 'This set is over.',
  allDone: 'That was everything. Well done.',
  lastSeconds: 'Ten seconds left.',
  hold: 'Hold.',
  halfway: 'Halfway.',
  release: 'And relax.',
  whyStop: 'Stopped. Hold on to something or sit down. Then choose the reason on the screen.',
  dizzy:
    'Stopped. Sit down, and stay seated until it has passed. Contact your therapist or doctor today. With chest pain, or if you are short of breath, call the emergency number at once.',
  askPain: 'Come to the screen, and choose how much it hurt.',
  painFirst: 'Before the next set, choose on the screen how much it hurt.',
  cameraMissing: 'The camera is not on yet.',
  ended: 'Ended. What you have done so far is saved.',
};

export const pauseLines: Record<PauseReason, string> = {
  'left-picture': 'Paused: you left the picture. Come back to continue.',
  'no-pictures': 'Paused: the camera gives no pictures. Stay where you are.',
  'not-followed': 'Paused for a moment. Stay where you are.',
  turned: 'Paused: the picture was turned. Turn it back.',
  button: 'Paused.',
  'page-hidden': 'Paused. Press Continue when you are ready.',
  'camera-ended': 'Paused: the camera has stopped. What you have done so far is saved.',
  stop: lines.whyStop,
};

/** 'Set two of three: split-stance sit-to-stand, right leg.' */
export function stepLine(step: SetStep): string {
  return `${capitalised(stepWords(step))}.`;
}

/** The same within a sentence. */
function stepWords({ item, side, number, ofSets }: SetStep): string {
  const which = ofSets === 1 ? '' : `set ${numberWord(number)} of ${numberWord(ofSets)}: `;
  return `${which}${lowered(itemName(item))}, ${side} leg`;
}

/** How much of it, and how fast: 'Six repetitions. Up in 1 second, …' */
export function doseLine({ item }: SetStep): string {
  if (item.kind === 'hold') {
    const holds = item.holds === 1 ? 'One hold' : `${capitalised(numberWord(item.holds))} holds`;
    return `${holds} of ${seconds(item.holdSeconds)}.`;
  }
  const count = capitalised(numberWord(item.repetitions));
  const dose = `${count} ${item.repetitions === 1 ? 'repetition' : 'repetitions'}.`;
  return item.tempo === null ? dose : `${dose} ${tempoSentence(item.tempo, item.task)}`;
}

/** 'Rest for 60 seconds. Then change sides: …' */
export function restLine(next: SetStep): string {
  const change = {
    first: 'Then',
    'next-set': 'Then',
    'other-side': 'Then change sides',
    'next-item': 'Next',
  };
  return `Rest for ${seconds(next.restSeconds)}. ${change[next.change]}: ${stepWords(next)}.`;
}

/**
 * When to stop, before the first movement.
 *
 * @param isFilmed  whether leaving the picture pauses it
 */
export function ruleLine(painLimit: number, isFilmed: boolean): string {
  const hurts = painLimit === 0 ? 'If it hurts' : `If it hurts more than ${numberWord(painLimit)} of ten`;
  const stop = `${hurts}, stop and sit down.`;
  return isFilmed ? `${stop} Walk out of the picture, and it pauses.` : stop;
}

export function stopLine(beyondPainLimit: string): string {
  return `Stopped. Hold on to something or sit down. ${beyondPainLimit}`;
}

export function seconds(value: number): string {
  return `${numberWord(value)} ${value === 1 ? 'second' : 'seconds'}`;
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
