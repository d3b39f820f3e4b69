import type { OpenFrameSource, VideoFacts } from '#device/frames/frameSource';
import { VideoProblem } from '#device/frames/videoProblem';

/** What a kept video says of itself; null where it can't be read. */
export async function readVideoFacts(
  video: File,
  openFrameSource: OpenFrameSource,
): Promise<VideoFacts | null> {
  try {
    const source = await openFrameSource(video);
    source.close();
    return source.facts;
  } catch (error) {
    if (error instanceof VideoProblem) return null;
    throw error;
  }
}
