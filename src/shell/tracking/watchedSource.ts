import type { FrameSource } from '#device/frames/frameSource';

/** Shows each picture to somebody before it goes on to the tracker, which takes it over. */
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
