import { itemName } from '#documents/plan/itemName';
import type { SetStep } from '#documents/plan/planSteps';
import { tempoSentence } from '#documents/plan/tempoSentence';
import { capitalised } from '#words/capitalised';
import { message } from '#words/messages/message';
import type { PauseReason } from './guideState';
import { numberWord } from './numberWord';

/** Why it is paused, and what to do. */
export function pauseLine(reason: PauseReason): string {
  return reason === 'stop' ? message('say.why-stop') : message(`say.paused.${reason}`);
}

/** 'Set two of three: split-stance sit-to-stand, right leg.' */
export function stepLine(step: SetStep): string {
  return capitalised(message('say.set', stepWords(step)));
}

function stepWords({ item, side, number, ofSets }: SetStep) {
  const [numberSaid, ofSetsSaid] = [numberWord(number), numberWord(ofSets)];
  return { exercise: lowered(itemName(item)), side, number: numberSaid, ofSets, ofSetsSaid };
}

/** How much of it, and how fast: 'Six repetitions. Up in 1 second, …' */
export function doseLine({ item }: SetStep): string {
  if (item.kind === 'hold') {
    const holds = capitalised(numberWord(item.holds, 'feminine'));
    return message('say.holds', { count: item.holds, holds, ...saidSeconds(item.holdSeconds) });
  }
  const repetitions = capitalised(numberWord(item.repetitions, 'feminine'));
  const dose = message('say.repetitions', { count: item.repetitions, repetitions });
  return item.tempo === null ? dose : `${dose} ${tempoSentence(item.tempo, item.task)}`;
}

/** 'Rest for 60 seconds. Then change sides: …' */
export function restLine(next: SetStep): string {
  const change = next.change === 'other-side' ? 'side' : next.change === 'next-item' ? 'item' : 'none';
  const then = message('say.then', { change, ...stepWords(next) });
  return `${secondsOfRest(next.restSeconds)} ${then}`;
}

/** 'Rest for sixty seconds.' */
export function secondsOfRest(seconds: number): string {
  return message('say.rest', saidSeconds(seconds));
}

function saidSeconds(seconds: number) {
  return { seconds, secondsSaid: numberWord(seconds, 'masculine') };
}

/**
 * When to stop, before the first movement.
 *
 * @param isFilmed  whether leaving the picture pauses it
 */
export function ruleLine(painLimit: number, isFilmed: boolean): string {
  const stop = message('say.rule', { limit: painLimit, limitSaid: numberWord(painLimit) });
  return isFilmed ? `${stop} ${message('say.rule-filmed')}` : stop;
}

/** A number as a line of its own: 'Three.' */
export function numberLine(value: number): string {
  return message('say.number', { number: capitalised(numberWord(value)) });
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
