import { loadWords } from '#words/loadWords';
import { message } from '#words/messages/message';
import type { PlanItem } from './planDocument';
import { tempoSentence } from './tempoSentence';

/** How much of an item: '2 sets of 6 repetitions, right leg', '3 holds of 30 seconds, left leg, then right leg'. */
export function doseWords(item: PlanItem): string {
  const sides = item.sides.length === 0 ? 'none' : item.sides.join('_');
  if (item.kind === 'hold')
    return message('dose.holds', { sets: item.sets, holds: item.holds, seconds: item.holdSeconds, sides });
  return message('dose.repetitions', { sets: item.sets, repetitions: item.repetitions, sides });
}

/** What else there is to know about an item, one sentence each. */
export function itemFacts(item: PlanItem): string[] {
  const facts: string[] = [];
  if (item.kind === 'repetitions' && item.tempo !== null) facts.push(tempoSentence(item.tempo, item.task));
  facts.push(...setupFacts(item));
  if (item.sidesInTurn && item.sides.length > 1 && item.sets > 1) facts.push(message('dose.in-turn'));
  if (item.perWeek !== null) facts.push(message('week.times', { count: item.perWeek }));
  const hasRest = item.restSeconds > 0 && (item.sets * item.sides.length > 1 || item.kind === 'hold');
  if (hasRest) facts.push(message('dose.rest', { seconds: item.restSeconds }));
  return facts;
}

/** How an item is set up: seat, step, what is held, load, how deep; one short sentence each. */
export function setupFacts(item: PlanItem): string[] {
  const { load, support, bendDeg } = item;
  const facts: string[] = [];
  if (item.kind === 'repetitions') {
    if (item.seatHeightCm !== null) facts.push(message('dose.seat', { cm: item.seatHeightCm }));
    if (item.stepHeightCm !== null) facts.push(message('dose.step', { cm: item.stepHeightCm }));
  }
  if (load !== null && load.kind !== 'none') facts.push(loadWords(load));
  if (support !== null) facts.push(message(`dose.support.${support}`));
  if (bendDeg !== null) facts.push(message('dose.bend', { deg: bendDeg }));
  return facts;
}
