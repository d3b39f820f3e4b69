import type { Week } from '../rules/week';

/**
 * How many times this week, and how many more, as far as the week has room. Null where the plan leaves it open, and
 * where there is nothing kind to say.
 */
export function weekWords({ done, open, hasRoom }: Week): string | null {
  if (open === null) return null;
  if (open === 0) return 'Done for this week.';
  const all = done + open;
  if (done === 0) return !hasRoom ? null : all === 1 ? 'Once this week.' : `${all} times this week.`;
  const count = `${done} of ${all} times this week.`;
  if (!hasRoom) return count;
  return `${count} ${open === 1 ? 'Once' : open === 2 ? 'Twice' : `${open} times`} more.`;
}
