import type * as covering from './coverVideo';
import type { OpenFrameSource } from './frameSource';

/** As in openFrameSource.ts; the reader of videos is large, and is fetched when the first video is opened. */
export const openFrameSource: OpenFrameSource = async (file) =>
  (await import('./openFrameSource')).openFrameSource(file);

/** As in coverVideo.ts, fetched when it is first needed. */
export const coverVideo: typeof covering.coverVideo = async (...asked) =>
  (await import('./coverVideo')).coverVideo(...asked);

/** As in coverVideo.ts, fetched when it is first needed. */
export const coveringFault: typeof covering.coveringFault = async () =>
  (await import('./coverVideo')).coveringFault();
