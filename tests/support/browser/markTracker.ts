import { keypointCount } from '#core/keypoints/keypointNames';
import type { PoseTracker } from '#device/pose/poseTracker';

/** Stands in for the pose network where frames are tested: its first point is the mark's centre, the rest is unseen. */
export function createMarkTracker(): PoseTracker {
  return {
    load: () => Promise.reject(new Error('There is nothing to load.')),
    reset: () => Promise.resolve(),
    estimate(picture, scale) {
      const { width, height } = picture;
      const context = new OffscreenCanvas(width, height).getContext('2d')!;
      context.drawImage(picture, 0, 0);
      picture.close();
      const centre = findMark(context.getImageData(0, 0, width, height));
      if (centre === null) return Promise.resolve(null);
      const row = new Float32Array(3 * keypointCount);
      row.set([centre.x * scale, centre.y * scale, 1]);
      return Promise.resolve(row);
    },
    close: () => undefined,
  };
}

/** Centre of all pixels that are far more red and blue than green, px. */
function findMark({ data, width }: ImageData): { x: number; y: number } | null {
  let [count, sumX, sumY] = [0, 0, 0];
  for (let at = 0; at < data.length; at += 4) {
    if (Math.min(data[at]!, data[at + 2]!) < data[at + 1]! + 80) continue;
    const pixel = at / 4;
    count++;
    sumX += (pixel % width) + 0.5;
    sumY += Math.floor(pixel / width) + 0.5;
  }
  return count === 0 ? null : { x: sumX / count, y: sumY / count };
}
