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

export const tooManyFrames = `has more than ${filmBounds.frames} frames, which is more than can be measured at once`;

/** How a film is out of bounds, as it follows its subject: 'has more than …'; null where it is not. */
export function filmFault({
  widthPx,
  heightPx,
  timesMs,
}: {
  widthPx: number;
  heightPx: number;
  /** Of each frame, increasing; may be left out. */
  timesMs?: ArrayLike<number>;
}): string | null {
  const [short, long] = [Math.min(widthPx, heightPx), Math.max(widthPx, heightPx)];
  if (!(short >= filmBounds.leastPx && long <= filmBounds.mostPx && long <= filmBounds.aspect * short))
    return `has pictures of ${widthPx} by ${heightPx} px, of which nobody can be measured`;
  if (timesMs === undefined || timesMs.length === 0) return null;
  if (timesMs.length > filmBounds.frames) return tooManyFrames;
  if (!(timesMs[timesMs.length - 1]! - timesMs[0]! <= filmBounds.spanMs))
    return `lasts longer than ${filmBounds.spanMs / 60_000} minutes, which is longer than can be measured at once`;
  for (let frame = 1; frame < timesMs.length; frame++)
    if (!(timesMs[frame]! - timesMs[frame - 1]! <= filmBounds.gapMs))
      return `has frames more than ${filmBounds.gapMs / 1000} s apart, so that the movement between them is unknown`;
  return null;
}
