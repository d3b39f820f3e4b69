import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { createLegCrop } from '#features/home/screens/createLegCrop';

const picture = { widthPx: 540, heightPx: 960 };

/** A right leg 400 px high whose hip is at a height, and the left hip beside it. */
function rowAt(hipY: number, kneeX = 250): Float32Array {
  const row = new Float32Array(keypointCount * 3);
  const put = (name: KeypointName, x: number, y: number) =>
    row.set([x, y, 1], keypointNames.indexOf(name) * 3);
  put('right_hip', 240, hipY);
  put('left_hip', 320, hipY);
  put('right_knee', kneeX, 700);
  put('right_ankle', 245, 880);
  put('right_heel', 240, 900);
  put('right_foot_index', 235, 905);
  return row;
}

function pushed(crop: ReturnType<typeof createLegCrop>, row: Float32Array, times: number) {
  let box = null;
  for (let i = 0; i < times; i++) box = crop.push(row, picture);
  return box;
}

describe('createLegCrop(side)', () => {
  it('shows the leg from hips to shoes, with a little room, once it was seen for a moment', () => {
    const crop = createLegCrop('right');
    expect(pushed(crop, rowAt(505), 8)).toBeNull();
    const box = crop.push(rowAt(505), picture)!;
    // 400 px high, 85 wide, 48 of room; cut off at the picture's lower edge.
    expect(box).toEqual({ x: 187, y: 457, width: 181, height: 496 });
  });

  it('stays where it is as long as the leg stays in it, and grows where it does not', () => {
    const crop = createLegCrop('right');
    const box = pushed(crop, rowAt(505), 9)!;
    expect(pushed(crop, rowAt(540), 20)).toBe(box);
    const grown = pushed(crop, rowAt(400), 9)!;
    expect(grown.y).toBeLessThan(400);
    expect(grown.y + grown.height).toBeGreaterThanOrEqual(box.y + box.height);
  });

  it('is moved by no single misread joint, and by nobody', () => {
    const crop = createLegCrop('right');
    const box = pushed(crop, rowAt(505), 9)!;
    crop.push(rowAt(505, 530), picture);
    expect(crop.push(null, picture)).toBe(box);
    expect(pushed(crop, rowAt(505), 3)).toBe(box);
  });
});
