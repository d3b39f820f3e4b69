import { Problem } from '#core/problem';
import { fileWords, type DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
import { bringUpLimits } from '../schema/bringUpLimits';
import { isFields } from '../schema/isFields';
import { planVersion, type PlanDocument } from './planDocument';
import { largestPlanBytes } from './planRanges';
import { readPlan } from './readPlan';

const chooseAnother = 'Choose the plan file that you were given.';

const planKind: DocumentKind<PlanDocument> = {
  problem: 'plan',
  format: 'overfoot-plan',
  version: planVersion,
  bringUp: bringUpPlan,
  read: (data) => {
    const read = readPlan(data);
    if ('plan' in read) return { value: read.plan };
    return {
      fault: 'senseless' in read ? `makes no sense: ${read.senseless}` : `is damaged at ${read.damaged}`,
    };
  },
  words: fileWords('plan', chooseAnother, 'Ask your therapist for a corrected one.'),
};

/**
 * Reads a plan from untrusted text.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parsePlan(text: string): PlanDocument {
  if (text.length > largestPlanBytes)
    throw new Problem('plan', `This file is too large for a plan. ${chooseAnother}`);
  return parseDocument(text, planKind);
}

/**
 * Version 2 added limits of measures other than the knee angle, which older plans lack. Version 3 put those of the
 * knee angle among the others.
 */
function bringUpPlan(older: object, version: number): object {
  if (version !== 1 && version !== 2) return older;
  const items = 'items' in older && Array.isArray(older.items) ? { items: older.items.map(bringUpItem) } : {};
  return { ...older, ...items, version: planVersion };
}

function bringUpItem(item: unknown): unknown {
  if (!isFields(item) || !('limits' in item)) return item;
  return { ...item, limits: bringUpLimits(item['limits']) };
}
