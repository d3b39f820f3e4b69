import { findExercise } from '#core/exercises/exercises';
import type { Preparation } from '#core/exercises/preparation';
import type { SpokenLine } from '#device/sound/sound';
import type { ToneKind } from '#device/sound/toneKind';
import type { SetStep } from '#documents/plan/planSteps';
import type { GuideEffect } from './guideEffect';
import type { GuideOptions, GuidePhase, GuideState } from './guideState';

/** One event being processed: the state may be written to, since it is a copy. */
export interface Turn {
  readonly options: GuideOptions;
  readonly state: GuideState;
  readonly effects: GuideEffect[];
  /** The time before this event. */
  readonly beforeMs: number;
}

export function stepOf({ options, state }: Turn): SetStep {
  return options.steps[state.stepIndex]!;
}

export function preparationOf(turn: Turn): Preparation {
  return findExercise(stepOf(turn).item.task).preparation;
}

export function needsCamera(turn: Turn): boolean {
  return findExercise(stepOf(turn).item.task).preparation.isFilmed;
}

/** @param caption  what is read in its place; the line itself where it is left out */
export function say({ state, effects }: Turn, line: string, when: SpokenLine['when'], caption = line): void {
  state.caption = caption;
  state.isSpeaking = true;
  effects.push({ kind: 'say', line, caption, when });
}

export function tone({ effects }: Turn, tone: ToneKind): void {
  effects.push({ kind: 'tone', tone });
}

export function enter({ state }: Turn, phase: GuidePhase): void {
  state.phase = phase;
  state.sinceMs = state.nowMs;
  state.pauseReason = null;
  state.pausedFrom = null;
}

/** Whether anything was done in this part of the set. */
export function hasWorked({ state }: Turn): boolean {
  return state.workedMs > 0 || state.count > state.countBefore;
}

/**
 * Whether nothing is being said, so that what comes next cuts nothing off.
 *
 * @param atMostMs  waited for since the phase began
 */
export function isSilent(turn: Turn, atMostMs: number): boolean {
  return !turn.state.isSpeaking || lastedMs(turn) >= atMostMs;
}

/** How long the phase has lasted, ms. */
export function lastedMs({ state }: Turn): number {
  return state.nowMs - state.sinceMs;
}

/**
 * Whole seconds left of a time that runs with the phase, if this event changed them; null if not.
 *
 * @param allMs  the whole time
 */
export function newSecondsLeft({ state, beforeMs }: Turn, allMs: number): number | null {
  const leftAt = (nowMs: number) => Math.max(0, Math.ceil((allMs - (nowMs - state.sinceMs)) / 1000));
  const left = leftAt(state.nowMs);
  return left === leftAt(Math.max(beforeMs, state.sinceMs)) ? null : left;
}

/** Whether this event went over a multiple of a time since the phase began. */
export function passesEvery({ state, beforeMs }: Turn, everyMs: number): boolean {
  const turns = (nowMs: number) => Math.floor((nowMs - state.sinceMs) / everyMs);
  return turns(state.nowMs) > turns(Math.max(beforeMs, state.sinceMs));
}
