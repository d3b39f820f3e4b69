import { dayWords } from '#words/dateWords';
import { message } from '#words/messages/message';
import type { ChangeSinceLast } from '../store/changeSinceLast';

/** What is different from the last time, in a sentence. */
export function changeWords({ change, side, earlierAt }: ChangeSinceLast): string {
  const how = change === 'less-inward' ? 'less' : 'farther';
  return message('change.since-last', { side, change: how, day: dayWords(earlierAt) });
}
