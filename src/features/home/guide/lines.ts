import { itemName } from '#documents/plan/itemName';
import type { SetStep } from '#documents/plan/planSteps';
import { tempoSentence } from '#documents/plan/tempoSentence';
import { capitalised } from '#words/capitalised';
import type { PauseReason } from './guideState';
import { numberWord } from './numberWord';

/** Spoken lines; each can be read as it is said. */
export const lines = {
  stayPlaced: 'Come back to your place.',
  bends: 'Good. Two easy bends on both legs, small and slow.',
  standing: 'Good. Now stand still on both feet.',
  placedAgain: 'Good. On we go.',
  go: 'Go.',
  uncounted:
    'This device is too slow to count along. Count for yourself. When you are done, come back and press the button.',
  idle: 'Go on when you are ready. To end the set, come back and press the button.',
  setDone: 'Set done. Well done.',
  setEnded: 'This set is over.',
  allDone: 'That was everything. Well done.',
  lastSeconds: 'Ten seconds left.',
  hold: 'Hold.',
  halfway: 'Half of it.',
  release: 'And let go.',
  cameraMissing: 'The camera is not there yet.',
  ended: 'Ended. What you did up to here is kept.',
};

export const pauseLines: Record<PauseReason, string> = {
  'left-picture': 'Paused, you left the picture. Come back, and it goes on.',
  button: 'Paused.',
  'page-hidden': 'Paused. Press go on when you are ready.',
  'camera-ended': 'Paused, the camera has stopped. What you did up to here is kept.',
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

export function stopLine(beyondPainLimit: string): string {
  return `Stopped. Hold on to something or sit down. ${beyondPainLimit}`;
}

export function seconds(value: number): string {
  return `${numberWord(value)} ${value === 1 ? 'second' : 'seconds'}`;
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
