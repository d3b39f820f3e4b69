import { limitedMeasures, type Limits } from '#core/protocol/limits';
import { findTask } from '#core/exercises/exercises';
import { itemName } from './itemName';
import type { PlanDocument, PlanItem } from './planDocument';
import { planRanges } from './planRanges';

type Field = keyof typeof planRanges;

const fieldWords: Record<Field, string> = {
  sets: 'sets',
  repetitions: 'repetitions',
  holds: 'holds',
  holdSeconds: 'seconds a hold',
  restSeconds: 'seconds of rest',
  downSeconds: 'seconds down',
  pauseSeconds: 'seconds at the turning point',
  upSeconds: 'seconds up',
  seatHeightCm: 'cm of seat height',
  kneeInwardDeg: 'degrees inward as the limit',
  kneeOutwardDeg: 'degrees outward as the limit',
  painLimit: 'as the pain limit',
};

const emptyWords: Record<string, string> = { items: 'holds nothing to do', sides: 'names no side' };

/**
 * What makes no sense about a number that is out of its range or not whole, or a list without entries: 'item 2 asks for …'.
 *
 * @param path  where it stands in the document
 * @param value  what stands there
 * @returns null where the path leads to neither
 */
export function rangeSentence(path: readonly PropertyKey[], value: unknown): string | null {
  const field = path.at(-1);
  const who = path[0] === 'items' && path.length > 1 ? `item ${Number(path[1]) + 1}` : 'it';
  if (Array.isArray(value) && value.length === 0)
    return `${who} ${emptyWords[String(field)] ?? 'lacks something'}`;
  if (typeof field !== 'string' || !(field in fieldWords) || typeof value !== 'number') return null;
  const { min, max } = planRanges[field as Field];
  // What is refused within its range is refused for its fraction.
  const sense =
    value > min && value < max ? `a whole number from ${min} to ${max} makes` : `${min} to ${max} make`;
  return `${who} asks for ${value} ${fieldWords[field as Field]}, where ${sense} sense`;
}

/**
 * What makes no sense about limits of which one lies inside the other.
 *
 * @param items  of a plan that may be anything
 */
export function limitsSentence(items: unknown): string | null {
  if (!Array.isArray(items)) return null;
  for (const [i, item] of items.entries()) {
    const { kneeInwardDeg: inward, kneeOutwardDeg: outward } = (item as RawItem | null)?.limits ?? {};
    if (typeof inward !== 'number' || typeof outward !== 'number' || inward + outward > 0) continue;
    return (
      `in item ${i + 1} one limit lies inside its opposite (${inward} degrees inward, ${outward} outward), ` +
      'so no knee could be between them'
    );
  }
  return null;
}

type RawItem = { limits?: { kneeInwardDeg?: unknown; kneeOutwardDeg?: unknown } | null };

/** What makes no sense about a plan whose parts are each valid; null where all is well. */
export function planSentence({ items, createdAt, reviewDate }: PlanDocument): string | null {
  if (reviewDate !== null && reviewDate < createdAt.slice(0, 10)) {
    return `its review date (${reviewDate}) is before the day it was made`;
  }
  for (const [i, item] of items.entries()) {
    const fault = itemFault(item);
    if (fault !== null) return `item ${i + 1} (${itemName(item)}) ${fault}`;
  }
  return null;
}

function itemFault(item: PlanItem): string | null {
  if (new Set(item.sides).size < item.sides.length) return `names the ${item.sides[0]} side twice`;
  if (item.kind === 'hold') return null;
  const fault = limitsFault(item.limits);
  if (fault !== null || item.seatHeightCm === null || findTask(item.task).shape === 'rise') return fault;
  return 'gives a seat height, but has no seat';
}

/** Of limits that leave nothing between them. */
function limitsFault(limits: Limits): string | null {
  const id = limitedMeasures(limits).find((one) => {
    const { least, most } = limits.others?.[one] ?? {};
    return least !== undefined && most !== undefined && least > most;
  });
  return id === undefined
    ? null
    : `has a limit of ${id.replaceAll('-', ' ')} with more at least than at most`;
}
