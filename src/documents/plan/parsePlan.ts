import { Problem } from '#core/problem';
import { message } from '#words/messages/message';
import type { DocumentKind } from '../reading/documentKind';
import { parseDocument } from '../reading/readDocument';
import { bringUpLimits } from '../schema/bringUpLimits';
import { isFields } from '../schema/isFields';
import { planWithoutProgress, withProgress } from './itemProgress';
import { planVersion, type PlanDocument } from './planDocument';
import { largestPlanBytes } from './planRanges';
import { readPlan } from './readPlan';
import { withKeyList } from './withKeyList';

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
 * Version 6 added the language; before, everything was in English. Version 7 added stages, load, support, step, bend,
 * sides in turn, and how often, to each item; and free items, and what the patient's device may change, to the plan.
 * Version 8 has a list of keys; before, there was one or none. Version 9 added thresholds; before, the device at home
 * knew the usual ones.
 */
function bringUpPlan(older: object, version: number): object {
  if (![1, 2, 3, 4, 5, 6, 7, 8].includes(version)) return older;
  const ofVersion7 = withKeyList(older);
  if (version >= 7) return { ...ofVersion7, thresholds: {}, version: planVersion };
  const hasItems = 'items' in older && Array.isArray(older.items);
  const items = hasItems
    ? { items: (older.items as unknown[]).map((item) => bringUpItem(item, version)) }
    : {};
  const ofVersion4 = version < 4 ? { usualPain: null, mayGoOnAbove: false, ifItGivesWay: '' } : {};
  const ofVersion5 = version < 5 ? { perWeek: null, videoWish: null } : {};
  const ofVersion6 = version < 6 ? { language: 'en' } : {};
  return {
    ...ofVersion7,
    ...items,
    ...ofVersion4,
    ...ofVersion5,
    ...ofVersion6,
    ...planWithoutProgress,
    version: planVersion,
  };
}

function bringUpItem(item: unknown, version: number): unknown {
  if (!isFields(item)) return item;
  const limits = version < 3 && 'limits' in item ? { limits: bringUpLimits(item['limits']) } : {};
  return withProgress({ ...item, ...limits });
}
