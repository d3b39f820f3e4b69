import { existsSync, mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createCanvas } from 'canvas';
import { frameCount, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { drawNumber } from '#tools/commands/tools/replay/pictureNumber';
import { filmPerson } from '../syntheticPerson';

/** The size of the fixture clips, px. */
const size = { widthPx: 540, heightPx: 960 };

/** Sit-to-stands with the right leg by an invented person, and a second of quiet sitting before and after each. */
export function filmSitToStands(peaksDeg: readonly number[]): KeypointTrack {
  return filmPerson({
    task: 'split-stance-sit-to-stand',
    side: 'right',
    repetitions: peaksDeg.map((peakDeg) => ({ peakDeg, movingMs: 3000 })),
    restMs: 1000,
    camera: { ...size, focalPx: 922 },
    noisePx: 0.5,
  }).track;
}

/**
 * A camera file of a film that nobody has to be found in: its pictures show an empty room and the number of their
 * frame, whose joints replayJoints gives. Written once a test run and number of frames.
 *
 * @param stillS  for how long the first picture stands before the film begins
 */
export function numberedCameraFile(track: KeypointTrack, stillS = 0): string {
  const name = `${process.ppid}-numbered-${frameCount(track)}-after-${stillS}.mjpeg`;
  const path = join(projectRoot, 'test-results/cameras', name);
  if (existsSync(path)) return path;
  mkdirSync(dirname(path), { recursive: true });
  const pictures = Array.from({ length: frameCount(track) }, (_, frame) => drawRoom(frame));
  const still = Array.from({ length: 30 * stillS }, () => pictures[0]!);
  writeFileSync(`${path}.part`, Buffer.concat([...still, ...pictures]));
  renameSync(`${path}.part`, path);
  return path;
}

/** A light wall above a darker floor, with the number on the wall. */
function drawRoom(number: number): Buffer {
  const { widthPx, heightPx } = size;
  const canvas = createCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d');
  context.fillStyle = '#b8b4a8';
  context.fillRect(0, 0, widthPx, heightPx);
  context.fillStyle = '#5a5048';
  context.fillRect(0, heightPx * 0.7, widthPx, heightPx * 0.3);
  drawNumber(context, number, size);
  return canvas.toBuffer('image/jpeg');
}
