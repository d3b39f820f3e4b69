import type { HoldState } from '#core/segmentation/createHoldTimer';
import type { SetStep } from '#documents/plan/planSteps';
import { allowedPresses } from './allowedPresses';
import type { GuidePress } from './guideEvent';
import type { GuideOptions, GuidePhase, GuideState, PauseReason } from './guideState';
import { guideTimes } from './guideTimes';
import { holdAt } from './holdAt';

/** The guide as a screen shows it. */
export interface GuideView {
  phase: GuidePhase;
  /** The set that is being done, or that comes after the rest. */
  step: SetStep;
  /** Repetitions, or holds, done in this set; null where they can't be counted. */
  count: number | null;
  /** Asked for in this set. */
  ofCount: number;
  /** Left of the countdown or the rest; null in other phases. */
  secondsLeft: number | null;
  /** Null where no hold is being done. */
  hold: HoldState | null;
  pauseReason: PauseReason | null;
  /** What to move, in placing; null where nothing is known to be moved. */
  placingLine: string | null;
  /** Said last, in writing. */
  caption: string;
  /** Which buttons make sense now. */
  presses: readonly GuidePress[];
}

export function guideView(options: GuideOptions, state: GuideState): GuideView {
  const step = options.steps[state.stepIndex]!;
  const { item } = step;
  const isHold = item.kind === 'hold';
  const isDoing = state.phase === 'working' || state.pausedFrom === 'working';
  return {
    phase: state.phase,
    step,
    count: state.hasMissed ? null : state.count,
    ofCount: isHold ? item.holds : item.repetitions,
    secondsLeft: secondsLeft(state, step),
    hold: isHold && isDoing ? holdAt(item, state.workedMs) : null,
    pauseReason: state.pauseReason,
    placingLine: state.phase === 'placing' && !state.isPlaced ? state.placingLine : null,
    caption: state.caption,
    presses: allowedPresses(state),
  };
}

function secondsLeft(state: GuideState, { restSeconds }: SetStep): number | null {
  const { phase, pausedFrom, nowMs, sinceMs, pausedAfterMs } = state;
  const isResting = phase === 'resting' || pausedFrom === 'resting';
  if (!isResting && phase !== 'countdown') return null;
  const lastedMs = phase === 'paused' ? pausedAfterMs : nowMs - sinceMs;
  const allMs = isResting ? 1000 * restSeconds : guideTimes.countdown;
  return Math.max(0, Math.ceil((allMs - lastedMs) / 1000));
}
