/** Which part of the videos is sent, from least to most; the patient decides. */
export const videoParts = ['none', 'out-of-line', 'without-head', 'whole'] as const;
export type VideoPart = (typeof videoParts)[number];

/** Parts that have to be re-encoded from the recorded video. */
export type CoveredPart = Extract<VideoPart, 'out-of-line' | 'without-head'>;

export function isCovered(part: VideoPart): part is CoveredPart {
  return part === 'out-of-line' || part === 'without-head';
}

/**
 * How far down from the top a picture is painted black, by its time in ms from the start of the video.
 *
 * @returns  px from the picture's top; 0 = nothing of it, its height or more = all of it
 */
export type PictureCover = (timeMs: number) => number;
