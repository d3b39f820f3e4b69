import { bringUpLimits } from '../schema/bringUpLimits';
import { isFields, type Fields } from '../schema/isFields';
import { planVersion, type PlanDocument } from './planDocument';
import { PlanProblem } from './planProblem';
import { largestPlanBytes } from './planRanges';
import { readPlan } from './readPlan';

const chooseAnother = 'Choose the plan file that you were given.';
const askForAnother = 'Ask whoever made the plan for a corrected one.';

/**
 * Reads a plan from text that may be anything.
 *
 * @throws PlanProblem  with a sentence that says what is wrong and what to do
 */
export function parsePlan(text: string): PlanDocument {
  if (text.length > largestPlanBytes)
    throw new PlanProblem(`This file is too large for a plan. ${chooseAnother}`);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw new PlanProblem(`This is not a plan: it is not JSON. ${chooseAnother}`);
  }
  const fields = isFields(data) ? data : {};
  checkVersion(fields);
  const read = readPlan(broughtUp(fields, data));
  if ('plan' in read) return read.plan;
  const fault = 'senseless' in read ? `makes no sense: ${read.senseless}` : `is damaged at ${read.damaged}`;
  throw new PlanProblem(`This plan ${fault}. ${askForAnother}`);
}

/**
 * Version 2 added limits of measures beside the knee angle, which older plans go without. Version 3 put those of the
 * knee angle among the others.
 */
function broughtUp(fields: Fields, data: unknown): unknown {
  const { version, items } = fields;
  if (version !== 1 && version !== 2) return data;
  return { ...fields, version: planVersion, items: Array.isArray(items) ? items.map(bringUpItem) : items };
}

function bringUpItem(item: unknown): unknown {
  if (!isFields(item) || !('limits' in item)) return item;
  return { ...item, limits: bringUpLimits(item['limits']) };
}

function checkVersion({ format, version }: Fields): void {
  if (format !== 'overfoot-plan') throw new PlanProblem(`This is not a plan. ${chooseAnother}`);
  if (typeof version === 'number' && version > planVersion) {
    throw new PlanProblem(
      `This plan is of version ${version}; this program reads up to ${planVersion}. Update the program.`,
    );
  }
}
