/** Durations within a set, ms; found by trial, no source. */
export const guideTimes = {
  /** Well placed for this long counts as placed. */
  placedSteady: 1200,
  /** Out of place for this long in the quiet stand returns to placing, as often as this. */
  misplaced: 1000,
  setbacks: 2,
  /** Nobody in the picture for this long means left, somebody for this long means back. */
  gone: 1000,
  back: 1500,
  /** Time until the same placing hint is repeated, and the least time before a different one. */
  hintAgain: 8000,
  hintSoonest: 3000,
  /** After the same hint this often in vain, it goes on all the same. */
  hintTimes: 2,
  /** Time to walk back into place after a press. */
  walkBack: 6000,
  /** Longest wait for two easy bends. */
  bendsAtMost: 15_000,
  /** Two seconds of quiet stand, and what it takes to say so. */
  standing: 3500,
  /** Somebody who can't stand still is reminded once, and may still exercise. */
  standingAtMost: 9000,
  /**
   * To get into position: at least, where the position is seen; where it can't be inferred; at most, where it
   * does not look right.
   */
  readyAtLeast: 2500,
  postureSteady: 800,
  readyUnseen: 6000,
  readyAtMost: 20_000,
  readyHold: 8000,
  countdown: 3000,
  /** Time until the question how much the last set hurt is asked again. */
  painAgain: 15_000,
  /** Without a repetition for this long, the person is prompted. */
  idle: 20_000,
  /** Recorded after the last repetition, so that its end is seen. */
  finishing: 1500,
  finishingAtMost: 12_000,
  setDone: 4000,
  /** A longer gap between two ticks does not count as time worked. */
  longestTick: 1000,
  /** A voice that has not ended by then is not waited for any longer. */
  voiceAtMost: 20_000,
} as const;
