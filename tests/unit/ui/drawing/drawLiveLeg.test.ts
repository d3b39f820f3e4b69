import { createCanvas } from 'canvas';
import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { defaultLimits } from '#core/protocol/limits';
import type { Verdict } from '#core/scoring/verdict';
import type { Context2d } from '#ui/drawing/canvasShapes';
import { drawLiveLeg } from '#ui/drawing/drawLiveLeg';
import { verdictColours } from '#ui/drawing/verdictForm';

/** Points at (x, y), seen with full confidence; all others unseen. */
function rowOf(points: Partial<Record<KeypointName, [x: number, y: number]>>): Float32Array {
  const row = new Float32Array(keypointCount * 3);
  for (const [name, [x, y]] of Object.entries(points)) {
    row.set([x, y, 1], 3 * keypointNames.indexOf(name as KeypointName));
  }
  return row;
}

const straight = rowOf({
  left_hip: [100, 40],
  left_knee: [100, 100],
  left_ankle: [100, 160],
  left_heel: [100, 166],
  left_foot_index: [100, 178],
});
/** Seated, the thigh points at the camera. */
const seated = rowOf({ left_hip: [100, 84], left_knee: [100, 100], left_ankle: [100, 160] });

function draw(row: Float32Array, limits: typeof defaultLimits | null) {
  const canvas = createCanvas(200, 200);
  const context = canvas.getContext('2d');
  const scene = { row, side: 'left', limits } as const;
  drawLiveLeg(context as unknown as Context2d, scene, 1);
  return (x: number, y: number) => [...context.getImageData(x, y, 1, 1).data];
}

/** Thickness of lines on the live picture, px of the page. */
const livePx = 1.8;

/** Extent of the colour of a verdict's mark on the knee, px of the page. */
function markSize(verdict: Verdict): { width: number; height: number } {
  const canvas = createCanvas(200, 200);
  const context = canvas.getContext('2d');
  const knee = { verdict, direction: 'inward' } as const;
  const scene = { row: straight, side: 'left', limits: null, knee } as const;
  drawLiveLeg(context as unknown as Context2d, scene, livePx);
  const { data } = context.getImageData(0, 0, 200, 200);
  const colour = verdictColours[verdict];
  const wanted = [1, 3, 5].map((from) => parseInt(colour.slice(from, from + 2), 16));
  const shown = Array.from({ length: 200 * 200 }, (_, at) => at).filter((at) =>
    wanted.every((value, channel) => data[4 * at + channel] === value),
  );
  const extent = (values: number[]) => Math.max(...values) - Math.min(...values) + 1;
  const width = extent(shown.map((at) => at % 200));
  // The other half is white.
  return {
    width: verdict === 'cant-tell' ? 2 * width : width,
    height: extent(shown.map((at) => Math.floor(at / 200))),
  };
}

describe('drawLiveLeg(context, scene, unit)', () => {
  it('draws the knee as a plain dot on the leg, without any verdict', () => {
    const pixel = draw(straight, defaultLimits);
    expect(pixel(100, 100)).toEqual([255, 255, 255, 255]);
    expect(pixel(104, 100)).toEqual([255, 255, 255, 255]);
    expect(pixel(100, 70)).toEqual([255, 255, 255, 255]);
  });

  it('draws the edges of the lane as far apart as the limits allow', () => {
    // At half of 120 px, 10 degrees are 60 * tan(5) = 5.2 px to each side.
    const pixel = draw(straight, defaultLimits);
    expect(pixel(95, 130)[3]).toBeGreaterThan(0);
    expect(pixel(105, 130)[3]).toBeGreaterThan(0);
    expect(pixel(91, 130)[3]).toBe(0);
    expect(pixel(109, 130)[3]).toBe(0);
  });

  it('leaves the lane out where there are no limits to be shown', () => {
    expect(draw(straight, null)(96, 130)[3]).toBe(0);
  });

  it('shows the lane by its edges alone while the thigh points at the camera', () => {
    const lane = (row: Float32Array) => {
      const pixel = draw(row, { 'knee-angle': { least: -25, most: 25 } });
      return Array.from({ length: 40 }, (_, i) => pixel(61 + i, 130)[3]!).filter((alpha) => alpha > 0).length;
    };
    expect(lane(seated)).toBeGreaterThan(0);
    expect(lane(seated)).toBeLessThan(lane(straight));
  });

  // 14 mm from 3 m are 16 minutes of arc, atan(14 / 3000), and 78 px of a page of 390 px on a phone 70 mm wide.
  it.each(['in', 'probably-in', 'cant-tell', 'probably-out', 'out'] as const)(
    'draws a knee of the verdict %s large enough for three metres',
    (verdict) => {
      const mark = markSize(verdict);
      expect(Math.min(mark.width, mark.height)).toBeGreaterThanOrEqual(78);
    },
  );

  it('draws nothing where nobody is seen well enough', () => {
    const pixel = draw(rowOf({}), defaultLimits);
    expect(pixel(100, 100)[3]).toBe(0);
    expect(pixel(0, 0)[3]).toBe(0);
  });
});
