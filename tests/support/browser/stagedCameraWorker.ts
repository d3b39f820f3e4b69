/** Draws what a staged camera sees, at its own pace, however busy the page is. */
import { drawNumber } from '#tools/commands/tools/replay/pictureNumber';
import type { StagedFrames, StagedPart } from './stagedFilm';

/** How the camera behaves; all of it can change while it runs. */
export interface StagedCamera {
  rateHz: number;
  /** Whether no more pictures come. */
  isFrozen: boolean;
  /** Whether it films a room without light. */
  isDark: boolean;
  widthPx: number;
  heightPx: number;
  part: StagedPart;
}

/** Put in front of this script by stageCamera. */
declare const stagedFrames: StagedFrames;

/** The pace of the film, Hz: that of a camera may be another one. */
const filmHz = 30;

const canvas = new OffscreenCanvas(1, 1);
const context = canvas.getContext('2d', { alpha: false })!;
let camera: StagedCamera | null = null;
let writer: WritableStreamDefaultWriter<VideoFrame> | null = null;
let partSinceMs = 0;
let nextMs = 0;

self.onmessage = ({
  data,
}: MessageEvent<{ writable?: WritableStream<VideoFrame>; camera: StagedCamera }>) => {
  if (data.camera.part !== camera?.part) partSinceMs = performance.now();
  camera = data.camera;
  if (data.writable === undefined) return;
  writer = data.writable.getWriter();
  nextMs = performance.now();
  show();
};

function show(): void {
  if (camera === null || writer === null) return;
  const nowMs = performance.now();
  const { isFrozen, rateHz } = camera;
  if (!isFrozen && (writer.desiredSize ?? 0) > 0)
    void writer.write(drawFrame(camera, nowMs)).catch(() => close());
  nextMs = Math.max(nextMs + 1000 / rateHz, nowMs);
  setTimeout(show, nextMs - nowMs);
}

function drawFrame({ widthPx, heightPx, part, isDark }: StagedCamera, nowMs: number): VideoFrame {
  if (canvas.width !== widthPx || canvas.height !== heightPx)
    Object.assign(canvas, { width: widthPx, height: heightPx });
  const { from, until } = stagedFrames[part];
  const shown = Math.floor(((nowMs - partSinceMs) * filmHz) / 1000) % (until - from);
  context.fillStyle = isDark ? '#0b0b0a' : '#b8b4a8';
  context.fillRect(0, 0, widthPx, heightPx);
  context.fillStyle = isDark ? '#050505' : '#5a5048';
  context.fillRect(0, heightPx * 0.7, widthPx, heightPx * 0.3);
  drawNumber(context, from + shown, { widthPx, heightPx });
  return new VideoFrame(canvas, { timestamp: Math.round(nowMs * 1000) });
}
