import { message } from '#words/messages/message';
import type { PlacingCheck } from '../placing';
import type { Sight } from '../sightOf';

/** The result of one check, without its name. */
export type PlacingFinding = Omit<PlacingCheck, 'id'>;

/**
 * One check. What was good stays good up to a wider limit, so that somebody at the limit does not make it flicker.
 */
export type Check = (sight: Sight, wasGood: boolean) => PlacingFinding;

export function good(sentence: string, short: string): PlacingFinding {
  return { state: 'good', source: 'seen', sentence, short, arrow: 'none' };
}

export function move(
  sentence: string,
  short: string,
  arrow: PlacingFinding['arrow'] = 'none',
): PlacingFinding {
  return { state: 'move', source: 'seen', sentence, short, arrow };
}

export function unknown(sentence: string, short: string): PlacingFinding {
  return { state: 'unknown', source: 'seen', sentence, short, arrow: 'none' };
}

/** What can't be known before somebody is in view. */
export function notYet(): PlacingFinding {
  return unknown(message('placing.step-in'), message('placing.step-in.short'));
}
