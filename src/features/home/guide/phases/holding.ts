import type { HoldState } from '#core/segmentation/createHoldTimer';
import type { HoldItem } from '#documents/plan/planDocument';
import { message } from '#words/messages/message';
import { holdAt } from '../holdAt';
import { numberLine, secondsOfRest } from '../lines';
import { say, stepOf, tone, type Turn } from '../turn';
import { endSet } from './closing';

/** Said aloud, each, at the end of a hold and of the rest after it. */
const countedSeconds = 3;

/** Begins or continues a hold, or the rest after it. */
export function startHold(turn: Turn): void {
  const { item } = stepOf(turn);
  if (item.kind !== 'hold') return;
  const at = holdAt(item, turn.state.workedMs);
  say(turn, at.phase === 'resting' ? restLine(at) : message('say.hold'), 'next');
}

/** Announces what this event changed in the holds of a set. */
export function followHold(turn: Turn, item: HoldItem, workedBeforeMs: number): void {
  const before = holdAt(item, workedBeforeMs);
  const at = holdAt(item, turn.state.workedMs);
  turn.state.count = at.phase === 'holding' ? at.hold - 1 : at.hold;
  if (at.phase === 'done') {
    say(turn, message('say.release'), 'next');
    return endSet(turn, null);
  }
  if (at.phase !== before.phase || at.hold !== before.hold) {
    tone(turn, at.phase === 'holding' ? 'start' : 'end');
    say(
      turn,
      at.phase === 'holding' ? message('say.hold') : `${message('say.release')} ${restLine(at)}`,
      'next',
    );
    return;
  }
  if (at.secondsLeft !== before.secondsLeft) tellSeconds(turn, item, at);
}

function tellSeconds(turn: Turn, { holdSeconds }: HoldItem, { phase, secondsLeft }: HoldState): void {
  if (secondsLeft <= countedSeconds) {
    tone(turn, 'tick');
    say(turn, numberLine(secondsLeft), 'next', `${secondsLeft}`);
  } else if (phase === 'resting') return;
  else if (secondsLeft === 10) say(turn, message('say.last-seconds'), 'next');
  else if (holdSeconds >= 24 && secondsLeft === Math.floor(holdSeconds / 2))
    say(turn, message('say.halfway'), 'next');
}

function restLine({ secondsLeft }: HoldState): string {
  return secondsOfRest(secondsLeft);
}
