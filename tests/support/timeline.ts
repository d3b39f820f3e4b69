import type { Motion } from './taskMotion';

/** One repetition as requested. */
export interface PlannedRepetition {
  /**
   * Largest frontal-plane angle of the working knee, degrees, inward positive: at two thirds of the way up from a
   * seat, or at the bottom of a dip. Coming down to the seat the knee goes 0.8 of that.
   */
  peakDeg: number;
  /** From start to end without the pause, ms. */
  movingMs?: number;
  /** Rest at the far end, ms. */
  pauseMs?: number;
  /** How much of the whole movement is done: 1 all, below 0.7 a partial repetition, below 0.3 a false start. */
  share?: number;
  /** At the far end, goes back to this share of the movement and out again. */
  bounceTo?: number;
}

export interface PlannedScene {
  shape: 'rise' | 'dip';
  repetitions: readonly PlannedRepetition[];
  /** Rest before, between and after repetitions, ms. */
  restMs: number;
  /** From where the person walks in, and to where out, in body heights to their own left; 0 = there all along. */
  walkInFrom: number;
  walkOutTo: number;
  /** Greatest drop of the free hip and greatest lean of the trunk over the working leg, degrees. */
  pelvicDropDeg: number;
  trunkSideDeg: number;
  toeOutDeg: number;
  /** Angle that the working knee has all along, standing included, degrees, inward positive. */
  standingDeg: number;
}

/** When what happens in one repetition; ms, null where it does not happen in this task. */
export interface EventTimes {
  startMs: number;
  seatOffMs: number | null;
  topMs: number | null;
  topEndMs: number | null;
  /** Middle of the time at the lowest point. */
  bottomMs: number | null;
  seatContactMs: number | null;
  endMs: number;
}

export interface TimedRepetition {
  plan: PlannedRepetition;
  completeness: 'complete' | 'partial';
  events: EventTimes;
}

export interface Timeline {
  endMs: number;
  /** False starts are none. */
  repetitions: TimedRepetition[];
  /** @param atMs  any time; before the first and after the last instant the body rests */
  motionAt(atMs: number): Motion;
}

interface Key {
  atMs: number;
  progress: number;
  bow: number;
  aside: number;
  /** Of the movement that ends here. */
  peakDeg: number;
  share: number;
}

/** Lays repetitions out in time; between two instants the body moves with least jerk (Flash & Hogan 1985). */
export function buildTimeline(scene: PlannedScene): Timeline {
  const rise = scene.shape === 'rise';
  const standing = rise ? 1 : 0;
  const walksIn = scene.walkInFrom !== 0;
  const keys: Key[] = [
    {
      atMs: 0,
      progress: walksIn ? standing : 0,
      bow: 0,
      aside: scene.walkInFrom,
      peakDeg: 0,
      share: 1,
    },
  ];
  const go = (forMs: number, change: Partial<Key> = {}): number => {
    const last = keys.at(-1)!;
    keys.push({ ...last, ...change, atMs: last.atMs + forMs });
    return last.atMs + forMs;
  };

  if (walksIn) {
    go(600);
    go(1800, { aside: 0 });
    if (rise) {
      go(700);
      go(1300, { progress: 0, bow: 1 });
      go(500, { bow: 0 });
    }
  }
  let nowMs = go(scene.restMs);
  const repetitions: TimedRepetition[] = [];
  for (const plan of scene.repetitions) {
    const { peakDeg, movingMs = 2600, pauseMs = 350, share = 1, bounceTo } = plan;
    const startMs = nowMs;
    const seatOffMs = rise ? go(0.15 * movingMs, { bow: 1, peakDeg, share }) : null;
    const awayMs = (rise ? 0.35 : 0.5) * movingMs;
    let farMs = go(awayMs, { progress: share, peakDeg, share });
    if (bounceTo !== undefined) {
      go(awayMs / 2, { progress: bounceTo });
      farMs = go(awayMs / 2, { progress: share });
    }
    const farEndMs = go(pauseMs);
    nowMs = go(awayMs, { progress: 0, peakDeg: rise ? 0.8 * peakDeg : peakDeg });
    const seatContactMs = rise ? nowMs : null;
    if (rise) nowMs = go(0.15 * movingMs, { bow: 0 });
    if (share >= 0.3) {
      const bottomMs = rise ? null : (farMs + farEndMs) / 2;
      const [topMs, topEndMs] = rise ? [farMs, farEndMs] : [null, null];
      const events = { startMs, seatOffMs, topMs, topEndMs, bottomMs, seatContactMs, endMs: nowMs };
      repetitions.push({ plan, completeness: share < 0.7 ? 'partial' : 'complete', events });
    }
    nowMs = go(scene.restMs);
  }
  if (scene.walkOutTo !== 0) {
    if (rise) {
      go(500, { bow: 1, peakDeg: 0 });
      go(1200, { progress: 1 });
      go(600);
    }
    go(1800, { aside: scene.walkOutTo });
    go(600);
  }
  return {
    endMs: keys.at(-1)!.atMs,
    repetitions,
    motionAt: (atMs) => motionBetween(keys, atMs, scene),
  };
}

function motionBetween(keys: readonly Key[], atMs: number, scene: PlannedScene): Motion {
  const next = keys.findIndex((key) => key.atMs > atMs);
  const after = keys.at(next < 0 ? -1 : next)!;
  const before = next < 0 ? after : keys[Math.max(0, next - 1)]!;
  const spanMs = after.atMs - before.atMs;
  const eased = spanMs > 0 ? leastJerk((atMs - before.atMs) / spanMs) : 0;
  const mix = (name: 'progress' | 'bow' | 'aside') => before[name] + eased * (after[name] - before[name]);
  const progress = mix('progress');
  // From a seat the knee works hardest at two thirds of the way up; in a dip at the bottom. Both ends are in line.
  const way = Math.min(1, progress / after.share);
  const effort =
    scene.shape === 'rise' ? Math.sin(Math.PI * way ** 1.7) ** 2 : Math.sin((Math.PI * way) / 2) ** 2;
  return {
    progress,
    bow: mix('bow'),
    aside: mix('aside'),
    kneeDeg: scene.standingDeg + after.peakDeg * effort,
    pelvicDropDeg: scene.pelvicDropDeg * effort,
    trunkSideDeg: scene.trunkSideDeg * effort,
    toeOutDeg: scene.toeOutDeg,
  };
}

function leastJerk(share: number): number {
  return share ** 3 * (10 - 15 * share + 6 * share ** 2);
}
