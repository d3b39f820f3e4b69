import type { Side } from '../protocol/side';
import type { Correction, CorrectionChange } from './correction';

export type PointChange = Extract<CorrectionChange, { kind: 'move-point' }>;
export type RepetitionChange = Extract<
  CorrectionChange,
  { kind: 'exclude' | 'include' | 'split' | 'join' | 'move-edge' }
>;

/** What a list of corrections comes to. */
export interface SettledCorrections {
  side: Side;
  isMirrored: boolean;
  /** The last word on each point in each frame. */
  points: PointChange[];
  /** In the order in which they were made. */
  repetitions: RepetitionChange[];
  /** Whether anything differs from what the machine alone says. */
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

/** Takes the exclusion itself away, where it is the last thing that was done; else it is put beside it. */
function takeBackExclusion(repetitions: RepetitionChange[], change: RepetitionChange): void {
  const index = repetitions.findLastIndex(({ kind, atMs }) => kind === 'exclude' && atMs === change.atMs);
  const isLast = repetitions.slice(index + 1).every(({ kind }) => kind === 'exclude');
  if (index >= 0 && isLast) repetitions.splice(index, 1);
  else repetitions.push(change);
}
