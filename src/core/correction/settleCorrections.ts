import type { Side } from '../protocol/side';
import type { Correction, CorrectionChange } from './correction';

export type PointChange = Extract<CorrectionChange, { kind: 'move-point' }>;
export type RepetitionChange = Extract<
  CorrectionChange,
  { kind: 'exclude' | 'include' | 'split' | 'join' | 'move-edge' }
>;

/** The net effect of a list of corrections. */
export interface SettledCorrections {
  side: Side;
  isMirrored: boolean;
  /** The final position of each point in each frame. */
  points: PointChange[];
  /** In the order in which they were made. */
  repetitions: RepetitionChange[];
  /** Whether anything differs from the machine's own result. */
  isByHand: boolean;
}

/** @param side  the working side before any correction */
export function settleCorrections(
  corrections: readonly Pick<Correction, 'change'>[],
  side: Side,
): SettledCorrections {
  const points = new Map<string, PointChange>();
  const repetitions: RepetitionChange[] = [];
  let [workingSide, isMirrored] = [side, false];
  for (const { change } of corrections) {
    if (change.kind === 'move-point') points.set(`${change.point} ${change.timeMs}`, change);
    else if (change.kind === 'working-side') workingSide = change.side;
    else if (change.kind === 'mirrored') isMirrored = change.isMirrored;
    else if (change.kind === 'include') takeBackExclusion(repetitions, change);
    else repetitions.push(change);
  }
  return {
    side: workingSide,
    isMirrored,
    points: [...points.values()],
    repetitions,
    isByHand: workingSide !== side || isMirrored || points.size > 0 || repetitions.length > 0,
  };
}

/** Removes the exclusion itself if it was the last action; otherwise adds an inclusion after it. */
function takeBackExclusion(repetitions: RepetitionChange[], change: RepetitionChange): void {
  const index = repetitions.findLastIndex(({ kind, atMs }) => kind === 'exclude' && atMs === change.atMs);
  const isLast = repetitions.slice(index + 1).every(({ kind }) => kind === 'exclude');
  if (index >= 0 && isLast) repetitions.splice(index, 1);
  else repetitions.push(change);
}
