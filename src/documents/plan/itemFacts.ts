import { message } from '#words/messages/message';
import type { PlanItem } from './planDocument';
import { tempoSentence } from './tempoSentence';

/** How much of an item: '2 sets of 6 repetitions, right leg', '3 holds of 30 seconds, left leg, then right leg'. */
export function doseWords(item: PlanItem): string {
  const sides = item.sides.join('_');
  if (item.kind === 'hold')
    return message('dose.holds', { sets: item.sets, holds: item.holds, seconds: item.holdSeconds, sides });
  return message('dose.repetitions', { sets: item.sets, repetitions: item.repetitions, sides });
}

/** What else there is to know about an item, one sentence each. */
export function itemFacts(item: PlanItem): string[] {
  const facts: string[] = [];
  if (item.kind === 'repetitions') {
    if (item.tempo !== null) facts.push(tempoSentence(item.tempo, item.task));
    if (item.seatHeightCm !== null) facts.push(message('dose.seat', { cm: item.seatHeightCm }));
  }
  const hasRest = item.restSeconds > 0 && (item.sets * item.sides.length > 1 || item.kind === 'hold');
  if (hasRest) facts.push(message('dose.rest', { seconds: item.restSeconds }));
  return facts;
}
