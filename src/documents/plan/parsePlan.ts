import { Problem } from '#core/problem';
import { fileWords, type DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
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
  words: fileWords('plan', chooseAnother, 'Ask whoever made the plan for a corrected one.'),
};

/**
 * Reads a plan from text that may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parsePlan(text: string): PlanDocument {
  if (text.length > largestPlanBytes)
    throw new Problem('plan', `This file is too large for a plan. ${chooseAnother}`);
  return parseDocument(text, planKind);
}

/** Version 2 added limits of measures beside the knee angle, which older plans go without. */
function bringUpPlan(older: object, version: number): object {
  return version === 1 ? { ...older, version: planVersion } : older;
}
