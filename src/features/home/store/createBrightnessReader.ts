import { brightnessOf } from '../placing/brightnessOf';
import type { Brightness } from '../placing/placing';

/** Side of the small picture that is read: enough for its brightness, px. */
const sidePx = 48;

/** @returns  a function from a picture, which stays open, to its brightness; null where it can't be read */
export function createBrightnessReader(): (picture: ImageBitmap) => Brightness | null {
  let context: OffscreenCanvasRenderingContext2D | null = null;
  return (picture) => {
    try {
      context ??= new OffscreenCanvas(sidePx, sidePx).getContext('2d', { willReadFrequently: true });
      if (context === null) return null;
      context.drawImage(picture, 0, 0, sidePx, sidePx);
      return brightnessOf(context.getImageData(0, 0, sidePx, sidePx).data);
    } catch {
      return null;
    }
  };
}
