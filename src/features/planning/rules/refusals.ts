import { legLoad, type LegLoad } from '#core/exercises/legLoad';
import type { Override, Restriction } from '#documents/patient/caseEntries';
import { restrictionWords, untilWords } from '#documents/patient/restrictionWords';
import { itemName } from '#documents/plan/itemName';
import { stageOf } from '#documents/plan/itemProgress';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { capitalised } from '#words/capitalised';

/** An item beyond what a surgeon or doctor allows. */
export interface Refusal {
  restriction: Restriction;
  item: PlanItem;
  /** What is beyond, and what to do. */
  sentence: string;
}

/** Those that count on that day: not taken out, and not over. */
export function restrictionsInForce(restrictions: readonly Restriction[], today: string): Restriction[] {
  return restrictions.filter(
    ({ withdrawn, until }) => withdrawn === null && (until === null || until >= today),
  );
}

/**
 * Items beyond a restriction that nobody has signed over. What an item does not say is not taken as allowed.
 *
 * @param today  ISO 8601, without a time
 * @param overrides  each counts for what was shown then, so that a changed item asks again
 */
export function findRefusals(
  items: readonly PlanItem[],
  restrictions: readonly Restriction[],
  overrides: readonly Override[],
  today: string,
): Refusal[] {
  return restrictionsInForce(restrictions, today).flatMap((restriction) =>
    items.flatMap((item) => {
      const beyond = beyondWords(item, restriction);
      if (beyond === null) return [];
      const until = untilWords(restriction.until);
      const sentence = `${itemName(item)} ${beyond} ${capitalised(restriction.setBy)}: ${restrictionWords(restriction)}, ${until}.`;
      const isSigned = overrides.some(
        (one) => one.restriction === restriction.id && one.task === item.task && one.refusal === sentence,
      );
      return isSigned ? [] : [{ restriction, item, sentence }];
    }),
  );
}

/** What of a plan no rule can hold against a restriction, since it is only words. */
export function uncheckedSentence(
  freeItems: PlanDocument['freeItems'],
  restrictions: readonly Restriction[],
): string | null {
  if (freeItems.length === 0 || restrictions.length === 0) return null;
  const names = freeItems.map(({ name }) => `“${name}”`).join(', ');
  return `Done without the camera, and not held against the restrictions: ${names}. Look at it yourself.`;
}

/** Null where an item keeps to a restriction. */
function beyondWords(item: PlanItem, restriction: Restriction): string | null {
  const load = loadOf(item, restriction.side);
  switch (restriction.kind) {
    case 'bend': {
      const bendDeg = item.bendDeg ?? stageOf(item)?.bendDeg ?? null;
      if (!load.some(({ bends }) => bends)) return null;
      if (bendDeg === null) return `says nothing of how far the ${restriction.side} knee bends.`;
      return bendDeg > restriction.mostDeg
        ? `bends the ${restriction.side} knee to about ${bendDeg}°.`
        : null;
    }
    case 'weight-bearing': {
      if (load.some(({ bears }) => bears === 'all'))
        return `puts the whole weight of the body on the ${restriction.side} leg.`;
      const isPart = load.some(({ bears }) => bears === 'part');
      return isPart && restriction.bearing === 'none' ? `puts weight on the ${restriction.side} leg.` : null;
    }
    case 'load':
      return item.sides.includes(restriction.side) && item.load !== null && item.load.kind !== 'none'
        ? `loads the ${restriction.side} leg.`
        : null;
    // No exercise of the library straightens the knee against a load with the foot free.
    case 'open-chain':
      return null;
  }
}

/** What the item asks of that leg while either side works; nothing before a side is chosen. */
function loadOf({ task, stage, sides }: PlanItem, side: Restriction['side']): LegLoad[] {
  const { working, other } = legLoad(task, stage);
  return sides.map((one) => (one === side ? working : other));
}
