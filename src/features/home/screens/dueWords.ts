import type { PlanItem } from '#documents/plan/planDocument';

/** How much of an item is due, in few words: '2 sets of 5, right leg', '3 holds of 30 seconds, each leg'. */
export function dueWords(item: PlanItem): string {
  const legs = item.sides.length > 1 ? 'each leg' : `${item.sides[0]} leg`;
  return `${doseInFew(item)}, ${legs}`;
}

function doseInFew(item: PlanItem): string {
  if (item.kind === 'hold') {
    const holds = `${counted(item.holds, 'hold')} of ${counted(item.holdSeconds, 'second')}`;
    return item.sets === 1 ? holds : `${item.sets} sets of ${holds}`;
  }
  if (item.sets > 1) return `${item.sets} sets of ${item.repetitions}`;
  return item.repetitions === 1 ? 'once' : `${item.repetitions} times`;
}

function counted(value: number, unit: string): string {
  return `${value} ${unit}${value === 1 ? '' : 's'}`;
}
