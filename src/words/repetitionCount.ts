import { message } from './messages/message';

/** '1 repetition', '6 repetitions'. */
export function repetitionCount(count: number): string {
  return message('set.repetitions', { count });
}
