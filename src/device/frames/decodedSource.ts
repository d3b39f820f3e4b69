import { VideoSampleSink, type Input, type InputVideoTrack } from 'mediabunny';
import { Problem } from '#core/problem';
import { message } from '#words/messages/message';
import type { Frame, FrameSource, VideoFacts } from './frameSource';
import { scaledSize } from './scaledSize';

/** Frames decoded straight from the file, each exactly once, with the container's own times. */
export function createDecodedSource(input: Input, track: InputVideoTrack, facts: VideoFacts): FrameSource {
  return {
    facts,
    async *frames(maxHeightPx, afterMs = -1, isWanted = () => true) {
      const { width, height } = scaledSize(facts.widthPx, facts.heightPx, maxHeightPx);
      const canvas = new OffscreenCanvas(width, height);
      const context = canvas.getContext('2d', { alpha: false })!;
      context.imageSmoothingQuality = 'high';
      let lastMs = afterMs;
      try {
        const fromS = afterMs > 0 ? afterMs / 1000 : undefined;
        for await (const sample of new VideoSampleSink(track).samples(fromS)) {
          const timeMs = sample.timestamp * 1000;
          if (timeMs > lastMs && timeMs >= 0 && isWanted(timeMs)) {
            sample.draw(context, 0, 0, width, height);
            lastMs = timeMs;
            sample.close();
            yield {
              timeMs,
              picture: canvas.transferToImageBitmap(),
              scale: facts.widthPx / width,
            } satisfies Frame;
          } else sample.close();
        }
      } catch (error) {
        if (lastMs >= 0) return; // A damaged end: what came before it is measured, and the count shows how much.
        throw new Problem(
          'video',
          message('video-trouble.decode', {
            file: facts.fileName,
            reason: error instanceof Error ? error.message : message('trouble.no-reason'),
          }),
        );
      }
    },
    close: () => input.dispose(),
  };
}
