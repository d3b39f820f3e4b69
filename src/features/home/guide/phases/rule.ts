import type { SpokenLine } from '#device/sound/sound';
import { ruleLine } from '../lines';
import { needsCamera, say, type Turn } from '../turn';

/**
 * Says when to stop, once, before the first movement of a session.
 *
 * @returns whether it is said now
 */
export function sayRule(turn: Turn, when: SpokenLine['when']): boolean {
  const { state, options } = turn;
  if (state.ruleSaidMs !== null) return false;
  state.ruleSaidMs = state.nowMs;
  say(turn, ruleLine(options.painLimit, needsCamera(turn)), when);
  return true;
}
