/** Reads pictures out of videos in the page, bundled and added to it by `addPictureReader`. */
import { ALL_FORMATS, BlobSource, Input, VideoSampleSink } from 'mediabunny';

/** A part of the picture at a time. */
export interface Region {
  timeMs: number;
  /** Rows of the picture, px of the measured video. */
  topPx: number;
  bottomPx: number;
}

export interface PictureReader {
  /** The brightest value of any colour in each region, 0 to 255. */
  brightest(src: string, regions: readonly Region[]): Promise<number[]>;
  /** By how much the colours of two videos, the other one read later, differ in each region, on average, 0 to 255. */
  apart(src: string, otherSrc: string, regions: readonly Region[], otherLaterMs: number): Promise<number[]>;
}

declare global {
  interface Window {
    pictureReader: PictureReader;
  }
}

window.pictureReader = {
  async brightest(src, regions) {
    const found: number[] = [];
    for await (const pixels of readRegions(src, regions)) {
      let brightest = 0;
      for (let i = 0; i < pixels.length; i++) if (i % 4 !== 3) brightest = Math.max(brightest, pixels[i]!);
      found.push(brightest);
    }
    return found;
  },
  async apart(src, otherSrc, regions, otherLaterMs) {
    const found: number[] = [];
    const later = regions.map((region) => ({ ...region, timeMs: region.timeMs + otherLaterMs }));
    const others = readRegions(otherSrc, later);
    for await (const pixels of readRegions(src, regions)) {
      const other = (await others.next()).value!;
      let sum = 0;
      for (let i = 0; i < pixels.length; i++) sum += Math.abs(pixels[i]! - other[i]!);
      found.push(sum / pixels.length);
    }
    return found;
  },
};

/** The pixels of each region, from the picture that is shown at its time; regions in order of time are read fastest. */
async function* readRegions(src: string, regions: readonly Region[]): AsyncGenerator<Uint8ClampedArray> {
  const blob = await (await fetch(src)).blob();
  const input = new Input({ source: new BlobSource(blob), formats: ALL_FORMATS });
  const track = (await input.getPrimaryVideoTrack())!;
  const [width, height] = [await track.getDisplayWidth(), await track.getDisplayHeight()];
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })!;
  let index = 0;
  for await (const sample of new VideoSampleSink(track).samplesAtTimestamps(
    regions.map(({ timeMs }) => timeMs / 1000),
  )) {
    const { timeMs, topPx, bottomPx } = regions[index++]!;
    if (sample === null) throw new Error(`There is no picture at ${timeMs} ms.`);
    sample.draw(context, 0, 0, width, height);
    sample.close();
    yield context.getImageData(0, topPx, width, bottomPx - topPx).data;
  }
  input.dispose();
}
