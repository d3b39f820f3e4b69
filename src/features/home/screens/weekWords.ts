import { message } from '#words/messages/message';
import type { Week } from '../rules/week';

/**
 * How many times this week, and how many more, as far as the week has room. Null where the plan leaves it open, and
 * where there is nothing kind to say.
 */
export function weekWords({ done, open, hasRoom }: Week): string | null {
  if (open === null) return null;
  if (open === 0) return message('week.over');
  const all = done + open;
  if (done === 0) return hasRoom ? message('week.none-yet', { all }) : null;
  const count = message('week.some', { done, all });
  if (!hasRoom) return count;
  return `${count} ${message('week.more', { open })}`;
}
