import { message } from '#words/messages/message';
import { stopCounting } from '../counting';
import type { StopReason } from '../guideState';
import { discardRecording } from '../recording';
import { enter, hasWorked, say, tone, type Turn } from '../turn';
import { closePart } from './closing';
import { pause } from './pausing';

/** Holds everything, in any phase, and asks for the reason; it may have been pressed by mistake. */
export function askWhy(turn: Turn): void {
  const { state } = turn;
  if (state.phase === 'finishing') {
    closePart(turn, null);
    enter(turn, 'set-done');
  }
  if (state.phase !== 'paused') return pause(turn, 'stop');
  state.pauseReason = 'stop';
  say(turn, message('say.why-stop'), 'now');
}

const cutShortWords: Record<StopReason, string> = {
  pain: 'pain',
  'gave-way': 'the knee gave way',
  locked: 'the knee locked or got stuck',
  dizzy: 'dizzy or unsteady',
  other: 'stopped for another reason',
  ended: 'ended early',
};

/** Ends everything, in any phase; what was done is kept. */
export function stopAll(turn: Turn, reason: StopReason): void {
  const { state } = turn;
  const from = state.phase === 'paused' ? state.pausedFrom : state.phase;
  const inSet = from !== 'set-done' && from !== 'resting';
  if (inSet && (reason !== 'ended' || hasWorked(turn)))
    closePart(turn, from === 'finishing' ? null : cutShortWords[reason]);
  stopCounting(turn);
  discardRecording(turn);
  const line = lineOf(turn, reason);
  state.stop = { reason, line };
  enter(turn, 'stopped');
  tone(turn, 'end');
  say(turn, line, 'now');
}

function lineOf({ options: { beyondPainLimit, ifItGivesWay } }: Turn, reason: StopReason): string {
  switch (reason) {
    case 'pain':
      return message('say.stopped-because', { advice: beyondPainLimit });
    case 'gave-way':
    case 'locked':
      return message('say.stopped-because', { advice: ifItGivesWay });
    case 'dizzy':
      return message('say.dizzy');
    case 'other':
    case 'ended':
      return message('say.ended');
  }
}
