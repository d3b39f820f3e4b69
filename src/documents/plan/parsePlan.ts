import { Problem } from '#core/problem';
import { message } from '#words/messages/message';
import type { DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
import { bringUpLimits } from '../schema/bringUpLimits';
import { isFields } from '../schema/isFields';
import { planVersion, type PlanDocument } from './planDocument';
import { largestPlanBytes } from './planRanges';
import { readPlan } from './readPlan';

const planKind: DocumentKind<PlanDocument> = {
  problem: 'plan',
  format: 'overfoot-plan',
  version: planVersion,
  bringUp: bringUpPlan,
  read: (data) => {
    const read = readPlan(data);
    if ('plan' in read) return { value: read.plan };
    return {
      fault:
        'senseless' in read
          ? message('plan-trouble.senseless', { fault: read.senseless })
          : message('plan-trouble.damaged', { place: read.damaged }),
    };
  },
  get words() {
    return {
      notOne: message('plan-trouble.not-one'),
      notJson: message('plan-trouble.not-json'),
      tooMuch: message('plan-trouble.too-much'),
      newer: (version: number, known: number) => message('plan-trouble.newer', { version, known }),
      faulty: (fault: string) => fault,
    };
  },
};

/**
 * Reads a plan from untrusted text.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parsePlan(text: string): PlanDocument {
  if (text.length > largestPlanBytes) throw new Problem('plan', message('plan-trouble.too-large'));
  return parseDocument(text, planKind);
}

/**
 * Version 2 added limits of measures other than the knee angle, which older plans lack. Version 3 put those of the
 * knee angle among the others. Version 4 added the usual pain, whether the patient may go on above the limit, and
 * what to do when the knee gives way. Version 5 added how many times a week, and how much of the video is wished for.
 * Version 6 added the language; before, everything was in English.
 */
function bringUpPlan(older: object, version: number): object {
  if (![1, 2, 3, 4, 5].includes(version)) return older;
  const isBeforeLimits = version < 3 && 'items' in older && Array.isArray(older.items);
  const items = isBeforeLimits ? { items: (older.items as unknown[]).map(bringUpItem) } : {};
  const ofVersion4 = version < 4 ? { usualPain: null, mayGoOnAbove: false, ifItGivesWay: '' } : {};
  const ofVersion5 = version < 5 ? { perWeek: null, videoWish: null } : {};
  return { ...older, ...items, ...ofVersion4, ...ofVersion5, language: 'en', version: planVersion };
}

function bringUpItem(item: unknown): unknown {
  if (!isFields(item) || !('limits' in item)) return item;
  return { ...item, limits: bringUpLimits(item['limits']) };
}
