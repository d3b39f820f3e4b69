import { describe, expect, it } from 'vitest';
import { legBox } from '#ui/drawing/legBox';

const picture = { widthPx: 600, heightPx: 900 };
const leg = {
  hip: { x: 300, y: 300 },
  knee: { x: 320, y: 450 },
  ankle: { x: 300, y: 600 },
  heel: null,
  toe: { x: 290, y: 640 },
};

describe('legBox(leg, picture, aspect)', () => {
  it('holds every seen joint with room around, in the wanted shape', () => {
    const box = legBox(leg, picture, 0.75);
    // 340 px of leg with 18 % of room at either end: 340 x 1.36 = 462.4.
    expect(box.height).toBeCloseTo(462.4, 6);
    expect(box.width / box.height).toBeCloseTo(0.75, 9);
    expect(box.y).toBeCloseTo(470 - 231.2, 6);
    expect(box.x).toBeCloseTo(305 - 173.4, 6);
  });

  it('moves into the picture for a leg at its edge', () => {
    const atEdge = {
      ...leg,
      hip: { x: 5, y: 20 },
      knee: { x: 2, y: 150 },
      ankle: { x: 4, y: 300 },
      toe: null,
    };
    const box = legBox(atEdge, picture, 0.75);
    expect(box.x).toBe(0);
    expect(box.y).toBe(0);
  });

  it('never exceeds the picture', () => {
    const huge = { ...leg, hip: { x: 0, y: 0 }, toe: { x: 600, y: 900 } };
    const box = legBox(huge, picture, 0.5);
    expect(box.height).toBeLessThanOrEqual(900);
    expect(box.x + box.width).toBeLessThanOrEqual(600);
  });

  it('is the whole picture where no joint is seen', () => {
    const unseen = { hip: null, knee: null, ankle: null, heel: null, toe: null };
    expect(legBox(unseen, picture, 1)).toEqual({ x: 0, y: 0, width: 600, height: 900 });
  });
});
