/**
 * Focal length assumed where the recording does not give it.
 *
 * Upright pictures come mostly from phones, whose long side spans about 58 degrees; wide ones often from
 * laptop cameras, whose long side spans about 71 degrees. A focal length that is off by a quarter moves the
 * knee angle by about 0.2 degrees, since the view is calibrated on the body itself (docs/view.md).
 *
 * @returns  px, above 0
 * Source:   common practice, no source; checked on rendered recordings with known focal lengths
 */
export function focalLengthPx(widthPx: number, heightPx: number): number {
  return (heightPx >= widthPx ? 0.9 : 0.7) * Math.max(widthPx, heightPx);
}
