import { findTask } from '#core/exercises/exercises';
import type { ToneKind } from '#device/sound/toneKind';
import type { RepetitionItem, Tempo } from '#documents/plan/planDocument';
import { message } from '#words/messages/message';
import { startCounting } from '../counting';
import type { HeardVerdict } from '../guideEvent';
import { guideTimes } from '../guideTimes';
import { feedbackLine, isOutside, repetitionLine } from '../repetitionLine';
import { enter, say, stepOf, tone, type Turn } from '../turn';
import { enterFinishing } from './closing';
import { followHold, startHold } from './holding';

export function enterWorking(turn: Turn): void {
  enter(turn, 'working');
  const { item } = stepOf(turn);
  turn.state.isResuming = false;
  tone(turn, 'start');
  if (item.kind === 'hold') return startHold(turn);
  turn.state.lastCountMs = turn.state.nowMs;
  startCounting(turn, item.task);
  say(turn, message('say.go'), 'next');
  if (!turn.state.canCount) missCount(turn);
}

/** The device is too slow: the person counts, and ends the set by hand. */
export function missCount(turn: Turn): void {
  turn.state.hasMissed = true;
  say(turn, message('say.uncounted'), 'after');
}

export function followWorking(turn: Turn): void {
  const { state, beforeMs } = turn;
  const { item } = stepOf(turn);
  const workedBeforeMs = state.workedMs;
  state.workedMs += Math.min(guideTimes.longestTick, state.nowMs - Math.max(beforeMs, state.sinceMs));
  if (item.kind === 'hold') return followHold(turn, item, workedBeforeMs);
  if (item.tempo !== null) beatTempo(turn, item, item.tempo);
  if (!state.hasMissed && state.nowMs - state.lastCountMs >= guideTimes.idle) {
    state.lastCountMs = state.nowMs;
    say(turn, message('say.idle'), 'after');
  }
}

export function hearRepetition(turn: Turn, heard: HeardVerdict | null): void {
  const { state, options } = turn;
  const { item } = stepOf(turn);
  if (item.kind === 'hold' || state.count >= item.repetitions) return;
  state.count++;
  state.lastCountMs = state.nowMs;
  if (state.hasMissed) return;
  const told = repetitionLine(state.count, item.repetitions, heard, item.feedback, options.outsideSound);
  tone(turn, told.tone);
  say(turn, told.line, 'next', told.caption);
  if (state.count === item.repetitions) enterFinishing(turn);
}

/** Feedback that the plan asks for on a repetition that was counted before its verdict was known. */
export function hearVerdict(turn: Turn, heard: HeardVerdict): void {
  const { state, options } = turn;
  const { item } = stepOf(turn);
  if (item.kind === 'hold' || state.count === 0 || state.hasMissed) return;
  if (isOutside(heard, item.feedback, options.outsideSound)) tone(turn, 'outside');
  const line = feedbackLine(heard, item.feedback);
  if (line !== null) say(turn, line, 'after');
}

/** A tone at the start of each part of the movement, repeated from 'go'. */
function beatTempo(turn: Turn, { task }: RepetitionItem, tempo: Tempo): void {
  const { state, beforeMs } = turn;
  const down = { tone: 'down', seconds: tempo.downSeconds } as const;
  const up = { tone: 'up', seconds: tempo.upSeconds } as const;
  const stay = { tone: 'turn', seconds: tempo.pauseSeconds } as const;
  const parts = findTask(task).shape === 'rise' ? [up, stay, down] : [down, stay, up];
  const roundMs = parts.reduce((sum, { seconds }) => sum + seconds * 1000, 0);
  let atMs = 0;
  let beat: ToneKind | null = null;
  const roundsAt = (nowMs: number) => Math.floor((nowMs - state.sinceMs - atMs) / roundMs);
  for (const part of parts) {
    const isPassed = roundsAt(state.nowMs) > roundsAt(Math.max(beforeMs, state.sinceMs));
    if (isPassed && part.seconds > 0) beat = part.tone;
    atMs += part.seconds * 1000;
  }
  if (beat !== null) tone(turn, beat);
}
