/**
 * Makes odd videos in the page out of the file in its file input, and puts them in that file's place: nothing but the
 * browser is needed. Bundled and added to the page by `addVideoMaker`.
 */
import {
  ALL_FORMATS,
  AudioSample,
  AudioSampleSource,
  BlobSource,
  BufferTarget,
  CanvasSource,
  Input,
  Mp4OutputFormat,
  Output,
  QUALITY_HIGH,
  VideoSampleSink,
  WebMOutputFormat,
  type VideoSample,
} from 'mediabunny';
import { keypointCount } from '#core/keypoints/keypointNames';
import { openFrameSource } from '#device/frames/openFrameSource';
import { trackVideo } from '#device/tracking/trackVideo';
import { markedForS, markPath } from '../markPath';
import { createBystander } from './bystander';
import { createMarkTracker } from './markTracker';

/** How a video is made from the chosen one; what is not named stays as it is. */
export interface Recipe {
  /** Part of the video that is kept, seconds; it starts at 0 in the new one. */
  fromS?: number;
  toS?: number;
  /** Size of the new picture, px. */
  size?: { width: number; height: number };
  /** Where the old picture goes in the new one, px; what lies outside is cut off. Default: fitted in, centred. */
  place?: { x: number; y: number; width: number; height: number };
  /** Frames a second; frames of the old video are dropped or repeated. */
  frameRateHz?: number;
  /** Every third frame is left out, so that the frames come unevenly. */
  uneven?: boolean;
  /** Time of the first frame, seconds. */
  startS?: number;
  /** The picture is stored turned against this many degrees, by which the file asks players to turn it back. */
  rotation?: 90 | 180 | 270;
  /** Somebody smaller walks by behind the person. */
  bystander?: boolean;
}

/** A coloured mark moves along `markPath` on plain paper; what is not named is 540 by 960 px at 30 Hz from 0 on. */
export type MarkedRecipe = Pick<Recipe, 'size' | 'frameRateHz' | 'uneven' | 'startS' | 'rotation' | 'toS'>;

/** Where the mark was found in each frame, px of the displayed picture; -1 where it was not. */
export interface MarkTrack {
  widthPx: number;
  heightPx: number;
  timesMs: number[];
  xPx: number[];
  yPx: number[];
}

export interface VideoMaker {
  remake(recipe: Recipe): Promise<void>;
  makeMarked(recipe: MarkedRecipe): Promise<void>;
  /** Follows the mark through the chosen file as a person is followed, but without the network. */
  trackMark(): Promise<MarkTrack>;
  /** A moving pattern without a person. */
  makeEmptyScene(frames: number): Promise<void>;
  makeSoundOnly(): Promise<void>;
  /** Keeps a share of the file's bytes. */
  cutBytes(share: number): Promise<void>;
  /** Overwrites the file's bytes between two shares of its length. */
  spoilBytes(fromShare: number, toShare: number): Promise<void>;
  /** The chosen file's bytes, in base 64. */
  readBytes(): Promise<string>;
}

declare global {
  interface Window {
    videoMaker: VideoMaker;
  }
}

const paper = '#8a8f94';

const maker: VideoMaker = {
  remake,
  makeMarked,
  trackMark,
  makeEmptyScene,
  makeSoundOnly,
  cutBytes,
  spoilBytes,
  readBytes,
};
window.videoMaker = maker;

function chosenFile(): File {
  return (document.getElementById('video') as HTMLInputElement).files![0]!;
}

function choose(parts: BlobPart[], name: string): void {
  const transfer = new DataTransfer();
  transfer.items.add(new File(parts, name));
  (document.getElementById('video') as HTMLInputElement).files = transfer.files;
}

async function remake(recipe: Recipe): Promise<void> {
  const input = new Input({ source: new BlobSource(chosenFile()), formats: ALL_FORMATS });
  const track = (await input.getPrimaryVideoTrack())!;
  const old = { width: await track.getDisplayWidth(), height: await track.getDisplayHeight() };
  const { fromS = 0, toS = await track.computeDuration(), size = old, startS = 0, rotation } = recipe;
  const place = recipe.place ?? fitted(old, size);
  const bystander = recipe.bystander ? await createBystander(new VideoSampleSink(track), old) : null;
  const draw = createPicture(size);
  const frames = createFrames(rotation === undefined || rotation === 180 ? size : turned(size), rotation);
  await frames.output.start();

  // One old picture is drawn as long as none of the new times lies past it.
  let wantedS = fromS;
  let index = 0;
  const stepS = recipe.frameRateHz === undefined ? null : 1 / recipe.frameRateHz;
  for await (const sample of new VideoSampleSink(track).samples(fromS, toS)) {
    const untilS = Math.min(toS, sample.timestamp + sample.duration);
    const timesS: number[] = [];
    const isLeftOut = recipe.uneven === true && index++ % 3 === 1;
    if (stepS === null) timesS.push(...(isLeftOut ? [] : [sample.timestamp]));
    else for (; wantedS < untilS - 1e-6; wantedS += stepS) timesS.push(wantedS);
    if (timesS.length > 0) {
      draw.context.fillStyle = paper;
      draw.context.fillRect(0, 0, size.width, size.height);
      if (bystander === null) sample.draw(draw.context, place.x, place.y, place.width, place.height);
      else drawWith(bystander, sample, draw.context, place, (sample.timestamp - fromS) / (toS - fromS));
    }
    for (const timeS of timesS)
      await frames.add(draw.canvas, timeS - fromS + startS, stepS ?? sample.duration);
    sample.close();
  }
  await frames.finish(rotation === undefined ? 'made.webm' : 'made.mp4');
  input.dispose();
}

function drawWith(
  bystander: Awaited<ReturnType<typeof createBystander>>,
  sample: VideoSample,
  context: OffscreenCanvasRenderingContext2D,
  { x, y, width, height }: Required<Recipe>['place'],
  progress: number,
): void {
  context.drawImage(bystander.compose(sample, progress), x, y, width, height);
}

async function makeMarked(recipe: MarkedRecipe): Promise<void> {
  const {
    size = { width: 540, height: 960 },
    frameRateHz = 30,
    toS = markedForS,
    startS = 0,
    rotation,
  } = recipe;
  const { canvas, context } = createPicture(size);
  const frames = createFrames(rotation === undefined || rotation === 180 ? size : turned(size), rotation);
  await frames.output.start();
  for (let index = 0; index < Math.round(toS * frameRateHz); index++) {
    if (recipe.uneven === true && index % 3 === 1) continue;
    const { x, y } = markPath(index / frameRateHz);
    context.fillStyle = paper;
    context.fillRect(0, 0, size.width, size.height);
    context.fillStyle = '#ff00ff';
    context.beginPath();
    context.arc(x * size.width, y * size.height, 0.06 * Math.min(size.width, size.height), 0, 2 * Math.PI);
    context.fill();
    await frames.add(canvas, startS + index / frameRateHz, 1 / frameRateHz);
  }
  await frames.finish(rotation === undefined ? 'made.webm' : 'made.mp4');
}

async function trackMark(): Promise<MarkTrack> {
  const source = await openFrameSource(chosenFile());
  try {
    const { widthPx, heightPx, timesMs, xPx, yPx, score } = await trackVideo(source, createMarkTracker());
    const first = (values: Float32Array) =>
      Array.from(timesMs, (_, frame) =>
        score[frame * keypointCount] === 0 ? -1 : values[frame * keypointCount]!,
      );
    return { widthPx, heightPx, timesMs: [...timesMs], xPx: first(xPx), yPx: first(yPx) };
  } finally {
    source.close();
  }
}

async function makeEmptyScene(frames: number): Promise<void> {
  const { canvas, context } = createPicture({ width: 360, height: 640 });
  const scene = createFrames(canvas);
  await scene.output.start();
  for (let i = 0; i < frames; i++) {
    context.fillStyle = paper;
    context.fillRect(0, 0, 360, 640);
    context.fillStyle = '#d8c39a';
    context.fillRect((i * 9) % 360, 300, 60, 40);
    await scene.add(canvas, i / 25, 1 / 25);
  }
  await scene.finish('room.webm');
}

async function makeSoundOnly(): Promise<void> {
  const output = new Output({ format: new WebMOutputFormat(), target: new BufferTarget() });
  const source = new AudioSampleSource({ codec: 'opus', bitrate: 64_000 });
  output.addAudioTrack(source);
  await output.start();
  const sampleRate = 48_000;
  const data = Float32Array.from(
    { length: sampleRate },
    (_, i) => 0.2 * Math.sin((2 * Math.PI * 220 * i) / sampleRate),
  );
  await source.add(new AudioSample({ data, format: 'f32', numberOfChannels: 1, sampleRate, timestamp: 0 }));
  await output.finalize();
  choose([output.target.buffer!], 'sound.webm');
}

async function cutBytes(share: number): Promise<void> {
  const file = chosenFile();
  choose([await file.slice(0, Math.round(file.size * share)).arrayBuffer()], file.name);
}

async function spoilBytes(fromShare: number, toShare: number): Promise<void> {
  const file = chosenFile();
  const bytes = new Uint8Array(await file.arrayBuffer());
  bytes.fill(0xff, Math.round(file.size * fromShare), Math.round(file.size * toShare));
  choose([bytes], file.name);
}

async function readBytes(): Promise<string> {
  const bytes = new Uint8Array(await chosenFile().arrayBuffer());
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}

function createPicture({ width, height }: { width: number; height: number }) {
  const canvas = new OffscreenCanvas(width, height);
  return { canvas, context: canvas.getContext('2d', { alpha: false })! };
}

/** An output that takes upright pictures and, where asked, stores them turned. */
function createFrames(stored: { width: number; height: number }, rotation?: Recipe['rotation']) {
  const { canvas, context } = createPicture(stored);
  // VP8 takes thirty times as long to write.
  const source = new CanvasSource(canvas, { codec: 'vp9', quality: QUALITY_HIGH });
  const format = rotation === undefined ? new WebMOutputFormat() : new Mp4OutputFormat();
  const output = new Output({ format, target: new BufferTarget() });
  output.addVideoTrack(source, rotation === undefined ? {} : { rotation });
  return {
    output,
    async add(picture: OffscreenCanvas, timeS: number, durationS: number): Promise<void> {
      context.save();
      context.translate(canvas.width / 2, canvas.height / 2);
      context.rotate((-(rotation ?? 0) * Math.PI) / 180);
      context.drawImage(picture, -picture.width / 2, -picture.height / 2);
      context.restore();
      await source.add(timeS, durationS);
    },
    async finish(name: string): Promise<void> {
      await output.finalize();
      choose([output.target.buffer!], name);
    },
  };
}

function fitted(old: { width: number; height: number }, size: { width: number; height: number }) {
  const scale = Math.min(size.width / old.width, size.height / old.height);
  const [width, height] = [old.width * scale, old.height * scale];
  return { x: (size.width - width) / 2, y: (size.height - height) / 2, width, height };
}

function turned({ width, height }: { width: number; height: number }) {
  return { width: height, height: width };
}
