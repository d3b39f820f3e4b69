import { stopCounting } from '../counting';
import type { GuideState } from '../guideState';
import { lines, stopLine } from '../lines';
import { discardRecording } from '../recording';
import { enter, hasWorked, say, tone, type Turn } from '../turn';
import { closePart } from './closing';

/** Ends everything, in any phase; what was done is kept. */
export function stopAll(turn: Turn, reason: NonNullable<GuideState['stop']>['reason']): void {
  const { state, options } = turn;
  const from = state.phase === 'paused' ? state.pausedFrom : state.phase;
  const inSet = from !== 'set-done' && from !== 'resting';
  if (inSet && (reason === 'pain' || hasWorked(turn))) {
    closePart(turn, from === 'finishing' ? null : reason === 'pain' ? 'pain' : 'ended early');
  }
  stopCounting(turn);
  discardRecording(turn);
  const line = reason === 'pain' ? stopLine(options.beyondPainLimit) : lines.ended;
  state.stop = { reason, line };
  enter(turn, 'stopped');
  tone(turn, 'end');
  say(turn, line, 'now');
}
