/** What a recording may be at most: it is measured in one piece, and everything of it is in memory meanwhile. */
export const filmBounds = {
  /** Thirty minutes at 60 frames a second. */
  frames: 108_000,
  /** From the first frame to the last, ms. */
  spanMs: 30 * 60_000,
  /** Between two frames, ms; nothing can be said of what happened in longer ones. */
  gapMs: 10_000,
  /** Either side of the picture as displayed. */
  leastPx: 64,
  mostPx: 16_384,
  /** The longer side over the shorter. */
  aspect: 8,
} as const;

/** How a film is out of bounds. */
export type FilmFault =
  { kind: 'picture'; widthPx: number; heightPx: number } | { kind: 'frames' | 'length' | 'gaps' };

/** Null where it is within them. */
export function filmFault({
  widthPx,
  heightPx,
  timesMs,
}: {
  widthPx: number;
  heightPx: number;
  /** Of each frame, increasing; may be left out. */
  timesMs?: ArrayLike<number>;
}): FilmFault | null {
  const [short, long] = [Math.min(widthPx, heightPx), Math.max(widthPx, heightPx)];
  if (!(short >= filmBounds.leastPx && long <= filmBounds.mostPx && long <= filmBounds.aspect * short))
    return { kind: 'picture', widthPx, heightPx };
  if (timesMs === undefined || timesMs.length === 0) return null;
  if (timesMs.length > filmBounds.frames) return { kind: 'frames' };
  if (!(timesMs[timesMs.length - 1]! - timesMs[0]! <= filmBounds.spanMs)) return { kind: 'length' };
  for (let frame = 1; frame < timesMs.length; frame++)
    if (!(timesMs[frame]! - timesMs[frame - 1]! <= filmBounds.gapMs)) return { kind: 'gaps' };
  return null;
}
