import { findTask } from '#core/exercises/exercises';
import { limitEnds, type LimitEnd } from '#core/measures/limitEnd';
import { findMeasure, measureIds, type MeasureId } from '#core/measures/measures';
import { measureName } from '#words/formatMeasure';
import { limitNumber, limitWords } from '#words/limitWords';
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
  stepHeightCm: 'cm of step height',
  bendDeg: 'degrees of knee bend',
  upTo: 'repetitions to work up to',
  painLimit: 'as the pain limit',
  usualPain: 'as the usual pain',
  perWeek: 'times a week',
};

/** How a sentence names the plan: after its subject ('this plan makes no sense: it …'), or on its own. */
export interface PlanNaming {
  plan: string;
  /** As it precedes a part of the plan. */
  its: string;
}

export const afterThePlan: PlanNaming = { plan: 'it', its: 'its' };
export const onItsOwn: PlanNaming = { plan: 'the plan', its: 'the' };

const emptyWords: Record<string, string> = { items: 'holds nothing to do', sides: 'names no side' };

/**
 * What makes no sense about a number that is out of its range or not whole, or a list without entries: 'item 2 asks for …'.
 *
 * @param path  place in the document
 * @param value  the value at that place
 * @returns null where the path leads to neither
 */
export function rangeSentence(
  path: readonly PropertyKey[],
  value: unknown,
  { plan }: PlanNaming,
): string | null {
  const field = path.at(-2) === 'upTo' ? 'upTo' : path.at(-1);
  const who = path[0] === 'items' && path.length > 1 ? `item ${Number(path[1]) + 1}` : plan;
  if (Array.isArray(value) && value.length === 0)
    return `${who} ${emptyWords[String(field)] ?? 'lacks something'}`;
  if (typeof field !== 'string' || typeof value !== 'number') return null;
  const limit = limitAt(path);
  if (limit !== null) {
    const { id, end } = limit;
    const { min, max } = findMeasure(id).limits[end];
    const [least, most] = [min, max].map((one) => limitNumber(id, end, one)).sort(byNumber);
    return `${who} asks for ${limitWords(id, end, value)} as the limit of ${measureName(id)}, where ${least} to ${most} make sense`;
  }
  if (!(field in fieldWords)) return null;
  const { min, max } = planRanges[field as Field];
  // What is refused within its range is refused for its fraction.
  const sense =
    value > min && value < max ? `a whole number from ${min} to ${max} makes` : `${min} to ${max} make`;
  return `${who} asks for ${value} ${fieldWords[field as Field]}, where ${sense} sense`;
}

const byNumber = (a: string, b: string) => parseFloat(a) - parseFloat(b);

/** The limit that a path leads to; null where it leads elsewhere. */
function limitAt(path: readonly PropertyKey[]): { id: MeasureId; end: LimitEnd } | null {
  const [field, measure, last] = path.slice(-3);
  const id = measureIds.find((one) => one === measure);
  const end = limitEnds.find((one) => one === last);
  return field !== 'limits' || id === undefined || end === undefined ? null : { id, end };
}

/**
 * What makes no sense about limits of which one lies inside the other.
 *
 * @param items  of an untrusted plan
 */
export function limitsSentence(items: unknown): string | null {
  if (!Array.isArray(items)) return null;
  for (const [i, item] of items.entries()) {
    const limits = (item as RawItem | null)?.limits ?? {};
    for (const id of measureIds) {
      const { least, most } = limits[id] ?? {};
      if (typeof least !== 'number' || typeof most !== 'number' || least <= most) continue;
      const both = `${limitWords(id, 'most', most)}, ${limitWords(id, 'least', least)}`;
      return `in item ${i + 1} one limit of ${measureName(id)} lies inside its opposite (${both}), so nothing could be between them`;
    }
  }
  return null;
}

type RawItem = { limits?: { [Id in MeasureId]?: { least?: unknown; most?: unknown } | null } | null };

/** What makes no sense about a plan whose parts are each valid; null where all is well. */
export function planSentence(
  { items, createdAt, reviewDate, returnKeys }: PlanDocument,
  { plan, its }: PlanNaming,
): string | null {
  if (reviewDate !== null && reviewDate < createdAt.slice(0, 10)) {
    return `${its} review date (${reviewDate}) is before the day it was made`;
  }
  if (new Set(returnKeys).size < returnKeys.length) return `${plan} names a key twice`;
  for (const [i, item] of items.entries()) {
    const fault = itemFault(item);
    if (fault !== null) return `item ${i + 1} (${itemName(item)}) ${fault}`;
  }
  return null;
}

function itemFault(item: PlanItem): string | null {
  if (new Set(item.sides).size < item.sides.length) return `names the ${item.sides[0]} side twice`;
  if (item.kind === 'hold') return null;
  const { seatHeightCm, stepHeightCm, upTo } = item;
  const { shape, preparation } = findTask(item.task);
  if (seatHeightCm !== null && shape !== 'rise') return 'gives a seat height, but has no seat';
  if (stepHeightCm !== null && !preparation.needs.includes('step'))
    return 'gives a step height, but has no step';
  if (upTo !== null && upTo.min > upTo.max)
    return `works up to ${upTo.min} repetitions, which is more than ${upTo.max}, the most it goes to`;
  return null;
}
