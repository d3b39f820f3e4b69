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
  const fields = fieldsOf(data);
  checkVersion(fields);
  const read = readPlan(broughtUp(fields, data));
  if ('plan' in read) return read.plan;
  const fault = 'senseless' in read ? `makes no sense: ${read.senseless}` : `is damaged at ${read.damaged}`;
  throw new PlanProblem(`This plan ${fault}. ${askForAnother}`);
}

/** Version 2 added limits of measures beside the knee angle, which older plans go without. */
function broughtUp(fields: Record<string, unknown>, data: unknown): unknown {
  return fields['version'] === 1 ? { ...fields, version: planVersion } : data;
}

function checkVersion({ format, version }: Record<string, unknown>): void {
  if (format !== 'overfoot-plan') throw new PlanProblem(`This is not a plan. ${chooseAnother}`);
  if (typeof version === 'number' && version > planVersion) {
    throw new PlanProblem(
      `This plan is of version ${version}; this program reads up to ${planVersion}. Update the program.`,
    );
  }
}

function fieldsOf(data: unknown): Record<string, unknown> {
  return (typeof data === 'object' && data !== null ? data : {}) as Record<string, unknown>;
}
