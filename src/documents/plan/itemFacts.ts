import type { PlanItem } from './planDocument';
import { tempoSentence } from './tempoSentence';

/** How much of an item: '2 sets of 6, right leg', '3 holds of 30 seconds, left leg, then right leg'. */
export function doseWords(item: PlanItem): string {
  const sides = item.sides.map((side) => `${side} leg`).join(', then ');
  const inSet =
    item.kind === 'hold'
      ? `${counted(item.holds, 'hold')} of ${counted(item.holdSeconds, 'second')}`
      : counted(item.repetitions, 'repetition');
  const dose = item.sets === 1 ? inSet : `${item.sets} sets of ${inSet}`;
  return `${dose}, ${sides}`;
}

/** What else there is to know about an item, one sentence each. */
export function itemFacts(item: PlanItem): string[] {
  const facts: string[] = [];
  if (item.kind === 'repetitions') {
    if (item.tempo !== null) facts.push(tempoSentence(item.tempo, item.task));
    if (item.seatHeightCm !== null) facts.push(`Seat ${item.seatHeightCm} cm high.`);
  }
  const hasRest = item.restSeconds > 0 && (item.sets * item.sides.length > 1 || item.kind === 'hold');
  if (hasRest) facts.push(`${counted(item.restSeconds, 'second')} of rest in between.`);
  return facts;
}

function counted(value: number, unit: string): string {
  return `${value} ${unit}${value === 1 ? '' : 's'}`;
}
