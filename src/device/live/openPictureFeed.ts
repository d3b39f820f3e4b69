import { createElementFeed } from './createElementFeed';
import { createTrackFeed } from './createTrackFeed';
import type { PictureFeed } from './pictureFeed';

/** The pictures of a running camera, read the best way that the browser has; ends with the camera. */
export function openPictureFeed(stream: MediaStream): PictureFeed {
  return createTrackFeed(stream) ?? createElementFeed(stream);
}
