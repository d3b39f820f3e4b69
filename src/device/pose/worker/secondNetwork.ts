import * as tf from '@tensorflow/tfjs';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import { leastScore } from '#core/keypoints/observedPoint';
import { secondJoints, type CloserFrame, type SecondRow } from '#core/looks/closerLook';
import { checkedModel } from './checkedModel';

/** Side of the network's picture, px. */
const inputPx = 256;
/** The side of the region over the distance from the middle of the hips to the farthest point seen. */
const regionOverReach = 2.25;
/** The network's own 17 points begin with nose, eyes, ears, shoulders, elbows and wrists. */
const firstJoint = 11;

/** A square of the picture, px. */
interface Region {
  left: number;
  top: number;
  side: number;
}

/** MoveNet Thunder: finds the 17 points of one person in a square. */
export interface SecondNetwork {
  /**
   * Looks at a picture and at its mirror image.
   *
   * @param usual  the first network's points, px of the displayed video
   * @param scale  px of the displayed video for one px of the picture
   * @returns  px of the displayed video; null where the first network did not see both hips
   */
  look(
    picture: ImageBitmap,
    scale: number,
    usual: KeypointRow,
  ): Pick<CloserFrame, 'second' | 'secondMirrored'> | null;
}

/** @throws Error  where the network's files can't be loaded */
export async function loadSecondNetwork(assetsUrl: string): Promise<SecondNetwork> {
  const model = await tf.loadGraphModel(checkedModel(assetsUrl, 'movenet-thunder'));
  const canvas = new OffscreenCanvas(inputPx, inputPx);
  const context = canvas.getContext('2d', { alpha: false, willReadFrequently: true })!;
  context.imageSmoothingQuality = 'high';

  const cut = (picture: ImageBitmap, { left, top, side }: Region, isMirrored: boolean) => {
    const k = inputPx / side;
    context.resetTransform();
    context.clearRect(0, 0, inputPx, inputPx);
    context.setTransform(isMirrored ? -k : k, 0, 0, k, isMirrored ? inputPx + k * left : -k * left, -k * top);
    context.drawImage(picture, 0, 0);
    return context.getImageData(0, 0, inputPx, inputPx);
  };

  const lookAt = (picture: ImageBitmap, scale: number, region: Region, isMirrored: boolean): SecondRow => {
    const pixels = cut(picture, region, isMirrored);
    const found = tf.tidy(() => {
      const input = tf.expandDims(tf.browser.fromPixels(pixels), 0);
      return (model.execute(input) as tf.Tensor).dataSync();
    });
    const row = new Float32Array(secondJoints.length * 3);
    secondJoints.forEach((_, joint) => {
      // The other side's joint in the mirror image; sides alternate, left first.
      const from = (firstJoint + (isMirrored ? joint ^ 1 : joint)) * 3;
      const [y, x, score] = [found[from]!, found[from + 1]!, found[from + 2]!];
      row[joint * 3] = scale * (region.left + (isMirrored ? 1 - x : x) * region.side);
      row[joint * 3 + 1] = scale * (region.top + y * region.side);
      row[joint * 3 + 2] = score;
    });
    return row;
  };

  return {
    look(picture, scale, usual) {
      const region = regionOf(usual, scale);
      if (region === null) return null;
      return {
        second: lookAt(picture, scale, region, false),
        secondMirrored: lookAt(picture, scale, region, true),
      };
    },
  };
}

const [leftHip, rightHip] = [keypointNames.indexOf('left_hip'), keypointNames.indexOf('right_hip')];

function regionOf(usual: KeypointRow, scale: number): Region | null {
  const isSeen = (point: number) => usual[point * 3 + 2]! >= leastScore;
  if (!isSeen(leftHip) || !isSeen(rightHip)) return null;
  const at = (point: number, axis: 0 | 1) => usual[point * 3 + axis]! / scale;
  const x = (at(leftHip, 0) + at(rightHip, 0)) / 2;
  const y = (at(leftHip, 1) + at(rightHip, 1)) / 2;
  let reach = 0;
  for (let point = 0; point < keypointCount; point++) {
    if (isSeen(point)) reach = Math.max(reach, Math.abs(at(point, 0) - x), Math.abs(at(point, 1) - y));
  }
  const side = regionOverReach * reach;
  return { left: x - side / 2, top: y - side / 2, side };
}
