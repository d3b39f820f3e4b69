/** How long things last on the way through a set, ms; tried out, no source. */
export const guideTimes = {
  /** Well placed for so long, it counts. */
  placedSteady: 1200,
  /** Out of place for so long in the quiet stand, it goes back to placing. */
  misplaced: 1000,
  /** Nobody in the picture for so long means left, somebody for so long means back. */
  gone: 1000,
  back: 1500,
  /** The same hint on placing again after, and another one at the soonest after. */
  hintAgain: 8000,
  hintSoonest: 3000,
  /** To walk back to the place after a press. */
  walkBack: 6000,
  /** Two easy bends are waited for so long. */
  bendsAtMost: 15_000,
  /** Two seconds of quiet stand, and what it takes to say so. */
  standing: 3500,
  /** Somebody who can't stand still is told so once, and not kept from exercising. */
  standingAtMost: 9000,
  /** To get into position: where it is seen, at least; where it can't be told; where it does not look like it, at most. */
  readyAtLeast: 2500,
  spokenWord: 400,
  postureSteady: 800,
  readyUnseen: 6000,
  readyAtMost: 20_000,
  readyHold: 8000,
  countdown: 3000,
  /** Without a repetition for so long, the person is asked. */
  idle: 20_000,
  /** Recorded after the last repetition, so that its end is seen. */
  finishing: 1500,
  setDone: 4000,
  /** A longer gap between two ticks is no time worked. */
  longestTick: 1000,
} as const;
