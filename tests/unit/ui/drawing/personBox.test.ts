import { describe, expect, it } from 'vitest';
import { keypointCount } from '#core/keypoints/keypointNames';
import { personBox } from '#ui/drawing/personBox';
import { placePicture } from '#ui/drawing/placePicture';

/** Frames in which the joints spread evenly over a box from (100, 200) to (164, 400). */
function track(frames: number) {
  const points = frames * keypointCount;
  const share = (at: number) => (at % keypointCount) / (keypointCount - 1);
  return {
    widthPx: 540,
    heightPx: 960,
    timesMs: Float64Array.from({ length: frames }, (_, frame) => 40 * frame),
    xPx: Float32Array.from({ length: points }, (_, at) => 100 + 64 * share(at)),
    yPx: Float32Array.from({ length: points }, (_, at) => 200 + 200 * share(at)),
    score: new Float32Array(points).fill(0.9),
  };
}

describe('personBox(track)', () => {
  it('holds all joints with room of 14 % of their height around', () => {
    // 0.14 of 200 px is 28 px.
    expect(personBox(track(10))).toEqual({ x: 72, y: 172, width: 120, height: 256 });
  });

  it('ends at the picture’s edge', () => {
    const close = track(10);
    close.xPx = close.xPx.map((xPx) => xPx - 90);
    expect(personBox(close)).toMatchObject({ x: 0, width: 102 });
  });

  it('is not moved by a stray point or an unseen one', () => {
    const stray = track(20);
    stray.xPx[5] = 530;
    stray.yPx[70] = 900;
    stray.yPx.fill(0, 0, 30);
    stray.score.fill(0.1, 0, 30);
    expect(personBox(stray)).toMatchObject({ y: 172, height: 256 });
  });

  it('is the whole picture where nobody was seen', () => {
    const nobody = { ...track(3), score: new Float32Array(3 * keypointCount) };
    expect(personBox(nobody)).toEqual({ x: 0, y: 0, width: 540, height: 960 });
  });
});

describe('placePicture(picture, part, stage)', () => {
  const picture = { widthPx: 540, heightPx: 960 };

  it('shows the whole picture, centred, when all of it must be seen', () => {
    const whole = { x: 0, y: 0, width: 540, height: 960 };
    expect(placePicture(picture, whole, { width: 400, height: 480 })).toEqual({
      left: 65,
      top: 0,
      width: 270,
      height: 480,
    });
  });

  it('brings the part to the middle, as large as the stage allows', () => {
    // 480 px of stage over 320 px of part: 1.5 times. Its middle, (250, 460), comes to (375, 690) of 810 x 1440.
    const part = { x: 150, y: 300, width: 200, height: 320 };
    expect(placePicture(picture, part, { width: 400, height: 480 })).toEqual({
      left: 200 - 375,
      top: 240 - 690,
      width: 810,
      height: 1440,
    });
  });

  it('leaves no empty border where the picture reaches', () => {
    const corner = { x: 0, y: 0, width: 200, height: 320 };
    expect(placePicture(picture, corner, { width: 400, height: 480 })).toMatchObject({ left: 0, top: 0 });
    const other = { x: 340, y: 640, width: 200, height: 320 };
    expect(placePicture(picture, other, { width: 400, height: 480 })).toMatchObject({
      left: 400 - 810,
      top: 480 - 1440,
    });
  });
});
