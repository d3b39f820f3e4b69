import type { Brightness } from './placing';

/** About this many pixels are sampled, evenly spread. */
const looks = 4000;

/**
 * Brightness of a picture.
 *
 * @param rgba  red, green, blue, opacity of each pixel, 0 to 255, as a canvas gives them; at least one pixel
 * @returns  0 black to 1 white, as the eye weighs the colours
 * Source:   luma weights of ITU-R BT.709
 */
export function brightnessOf(rgba: ArrayLike<number>): Brightness {
  const pixels = Math.floor(rgba.length / 4);
  const step = Math.max(1, Math.floor(pixels / looks));
  let count = 0;
  let sum = 0;
  let squares = 0;
  for (let pixel = 0; pixel < pixels; pixel += step) {
    const at = pixel * 4;
    const luma = (0.2126 * rgba[at]! + 0.7152 * rgba[at + 1]! + 0.0722 * rgba[at + 2]!) / 255;
    count++;
    sum += luma;
    squares += luma * luma;
  }
  if (count === 0) throw new RangeError('A picture needs at least one pixel.');
  const mean = sum / count;
  return { mean, contrast: Math.sqrt(Math.max(0, squares / count - mean * mean)) };
}
