import { scaledSize } from '../frames/scaledSize';
import type { LivePicture } from './pictureFeed';

export type ScaledPicture = Omit<LivePicture, 'timeMs'>;

/**
 * Scales a picture of the camera to the height that the pose network works with.
 *
 * @param widthPx  of the picture as displayed
 * @param maxHeightPx  smaller pictures are not scaled
 */
export async function scaleNow(
  source: ImageBitmapSource,
  widthPx: number,
  heightPx: number,
  maxHeightPx: number,
): Promise<ScaledPicture> {
  const { width, height } = scaledSize(widthPx, heightPx, maxHeightPx);
  const picture = await createImageBitmap(source, {
    resizeWidth: width,
    resizeHeight: height,
    resizeQuality: 'medium',
  });
  return { picture, scale: widthPx / width, widthPx, heightPx };
}
