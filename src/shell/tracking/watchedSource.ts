import type { FrameSource } from '#device/frames/frameSource';

/** Passes each picture to a watcher before the tracker, which then owns it. */
export function watchedSource(source: FrameSource, watch: (picture: ImageBitmap) => void): FrameSource {
  return {
    facts: source.facts,
    async *frames(...asked) {
      for await (const frame of source.frames(...asked)) {
        watch(frame.picture);
        yield frame;
      }
    },
    close: () => source.close(),
  };
}
