import {
  BufferTarget,
  CanvasSource,
  getFirstEncodableVideoCodec,
  Mp4OutputFormat,
  Output,
  Quality,
  WebMOutputFormat,
  type VideoCodec,
} from 'mediabunny';
import { Problem } from '#core/problem';
import { message } from '#words/messages/message';
import type { FrameSource, VideoFacts } from './frameSource';
import { openFrameSource } from './openFrameSource';

export interface CoverOptions {
  /** Shown on pictures that are covered in full. */
  words: string;
  signal: AbortSignal;
  /** @param share  0 to 1 */
  onProgress: (share: number) => void;
}

/** Seconds between key pictures, so that stepping through it is quick. */
const keyPictureS = 1;
/** At least this many bits a second: very small videos would fall apart otherwise. Common practice, no source. */
const leastBitsPerS = 200_000;
/** Size of the letters, as a share of the picture's width. */
const wordShare = 1 / 24;

/**
 * Rewrites a video with each picture painted black from its top down. Size, number and times of the pictures
 * stay; sound and all other metadata are dropped.
 *
 * @param coverPx  how far down the picture at a time (ms) is painted, px as displayed; its height or more
 * paints all of it
 * @throws the signal's reason when cancelled; VideoProblem where it can't be read, or this browser can't
 * write videos
 */
export async function coverVideo(
  file: File,
  coverPx: (timeMs: number) => number,
  { words, signal, onProgress }: CoverOptions,
): Promise<File> {
  const source = await openFrameSource(file);
  try {
    signal.throwIfAborted();
    const codec = await findCodec(source.facts, file.type);
    if (codec === null) throw new Problem('video', message('send.cannot-write'));
    return await write(source, codec, coverPx, { words, signal, onProgress });
  } finally {
    source.close();
  }
}

/** Why videos can't be written here; null where they can. */
export async function coveringFault(): Promise<string | null> {
  return (await findCodec({ widthPx: 640, heightPx: 480 }, '')) === null
    ? message('send.cannot-write')
    : null;
}

/** The same kind as the original, where it can be written, so that a device that plays one plays the other. */
async function findCodec(
  { widthPx, heightPx }: Pick<VideoFacts, 'widthPx' | 'heightPx'>,
  type: string,
): Promise<VideoCodec | null> {
  if (!('VideoEncoder' in globalThis)) return null;
  const codecs: VideoCodec[] = type.startsWith('video/mp4') ? ['avc', 'vp9', 'vp8'] : ['vp9', 'vp8', 'avc'];
  return getFirstEncodableVideoCodec(codecs, { width: widthPx, height: heightPx });
}

async function write(
  source: FrameSource,
  codec: VideoCodec,
  coverPx: (timeMs: number) => number,
  { words, signal, onProgress }: CoverOptions,
): Promise<File> {
  const { widthPx, heightPx, durationMs, fileBytes, frameRateHz, expectedFrames } = source.facts;
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d', { alpha: false })!;
  const target = new BufferTarget();
  const output = new Output({
    format: codec === 'avc' ? new Mp4OutputFormat() : new WebMOutputFormat(),
    target,
  });
  const bitrate = Math.max(leastBitsPerS, Math.round((fileBytes * 8000) / Math.max(1, durationMs)));
  const track = new CanvasSource(canvas, {
    codec,
    quality: new Quality({ bitrate }),
    keyFrameInterval: keyPictureS,
  });
  output.addVideoTrack(track);
  await output.start();
  try {
    let done = 0;
    for await (const { timeMs, picture } of source.frames(heightPx)) {
      context.drawImage(picture, 0, 0, widthPx, heightPx);
      picture.close();
      signal.throwIfAborted();
      paintCover(context, coverPx(timeMs), words);
      await track.add(timeMs / 1000, frameRateHz > 0 ? 1 / frameRateHz : 0);
      onProgress(Math.min(1, ++done / expectedFrames));
    }
    await output.finalize();
  } catch (error) {
    await output.cancel();
    throw error;
  }
  const type = codec === 'avc' ? 'video/mp4' : 'video/webm';
  return new File([target.buffer!], `covered.${type.slice(6)}`, { type });
}

function paintCover(context: OffscreenCanvasRenderingContext2D, coverPx: number, words: string): void {
  const { width, height } = context.canvas;
  if (coverPx <= 0) return;
  context.fillStyle = '#000';
  context.fillRect(0, 0, width, Math.min(height, Math.ceil(coverPx)));
  if (coverPx < height) return;
  context.fillStyle = '#aaa';
  context.font = `${width * wordShare}px sans-serif`;
  context.textAlign = 'center';
  context.fillText(words, width / 2, height / 2, width);
}
