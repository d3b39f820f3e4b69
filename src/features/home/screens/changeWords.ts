import { dayWords } from '#words/dateWords';
import type { ChangeSinceLast } from '../store/changeSinceLast';

/** What is different from the last time, in a sentence. */
export function changeWords({ change, side, earlierAt }: ChangeSinceLast): string {
  const how = change === 'less-inward' ? 'less far inward' : 'farther inward';
  return `Your ${side} knee went ${how} than last time, on ${dayWords(earlierAt)}.`;
}
