import { isProblem } from '#core/problem';
import type { OpenFrameSource, VideoFacts } from '#device/frames/frameSource';

/** The facts of a kept video; null where it can't be read. */
export async function loadVideoFacts(
  video: File,
  openFrameSource: OpenFrameSource,
): Promise<VideoFacts | null> {
  try {
    const source = await openFrameSource(video);
    source.close();
    return source.facts;
  } catch (error) {
    if (isProblem(error, 'video')) return null;
    throw error;
  }
}
