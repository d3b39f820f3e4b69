import type { Load } from '#core/protocol/load';
import { message } from './messages/message';

/** Levels that are said in the patient's language; any other is said as it was written. */
export const loadLevels = ['light', 'medium', 'strong'] as const;

/** What makes an exercise heavier, as a sentence for the patient: 'Loop band above the knees: light.' */
export function loadWords({ kind, level, where }: Exclude<Load, { kind: 'none' }>): string {
  const known = loadLevels.find((one) => one === level.trim().toLowerCase());
  return message(`dose.load.${kind}`, {
    level: known === undefined ? level.trim() : message(`dose.level.${known}`),
    where,
  });
}
