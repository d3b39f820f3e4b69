import { createCanvas } from 'canvas';
import { describe, expect, it } from 'vitest';
import { usualSureness } from '#core/chance/grade';
import { reasonCode, type MissingReason } from '#core/measurement/curve';
import { measure } from '#core/measurement/measure';
import { defaultLimits } from '#core/protocol/limits';
import type { Verdict } from '#core/scoring/verdict';
import type { Context2d } from '#ui/drawing/canvasShapes';
import { drawKnee } from '#ui/drawing/drawKnee';
import { drawLane } from '#ui/drawing/drawLane';
import { drawLegAt } from '#ui/drawing/drawLegAt';
import type { LaneShape } from '#ui/drawing/laneShape';
import { verdictColours } from '#ui/drawing/verdictForm';
import { filmPerson } from '../../../support/syntheticPerson';

function sheet(width = 200, height = 200) {
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  const pixel = (x: number, y: number) => [...context.getImageData(Math.round(x), Math.round(y), 1, 1).data];
  const inked = () => {
    const { data } = context.getImageData(0, 0, width, height);
    let count = 0;
    for (let i = 3; i < data.length; i += 4) if (data[i] !== 0) count++;
    return count;
  };
  return { context: context as unknown as Context2d, pixel, inked };
}

const rgb = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
const knee = { x: 100, y: 100 };

describe('drawKnee(context, knee, state, side, unit)', () => {
  const verdicts: Verdict[] = ['in', 'out', 'not-measured'];
  it.each(verdicts)('draws %s in its colour', (verdict) => {
    const { context, pixel } = sheet();
    drawKnee(context, knee, { verdict, direction: 'inward' }, 'right', 2);
    expect(pixel(100, 100).slice(0, 3)).toEqual(rgb(verdictColours[verdict]));
  });

  it('fills one half where it can’t be told', () => {
    const { context, pixel } = sheet();
    drawKnee(context, knee, { verdict: 'cant-tell', direction: 'inward' }, 'right', 2);
    expect(pixel(92, 100).slice(0, 3)).toEqual(rgb(verdictColours['cant-tell']));
    expect(pixel(108, 100).slice(0, 3)).toEqual([255, 255, 255]);
  });

  it('leaves the middle open where a side is only probable', () => {
    for (const verdict of ['probably-in', 'probably-out'] as const) {
      const { context, pixel } = sheet();
      drawKnee(context, knee, { verdict, direction: 'inward' }, 'right', 2);
      expect(pixel(100, 100).slice(0, 3)).toEqual([255, 255, 255]);
      expect(pixel(112, 100).slice(0, 3)).toEqual(rgb(verdictColours[verdict]));
    }
  });

  it.each([
    ['right', 'inward', 1],
    ['left', 'inward', -1],
    ['right', 'outward', -1],
  ] as const)('points the triangle of a %s knee that went %s the way it went', (side, direction, way) => {
    const { context, pixel } = sheet();
    drawKnee(context, knee, { verdict: 'out', direction }, side, 2);
    // The tip is 22.5 px out along the axis; the base ends at 14.6 px on the other side.
    expect(pixel(100 + 18 * way, 100)[3]).toBe(255);
    expect(pixel(100 - 18 * way, 100)[3]).toBe(0);
    // Off the axis there is ink near the base only.
    expect(pixel(100 - 10 * way, 112)[3]).toBe(255);
    expect(pixel(100 + 10 * way, 112)[3]).toBe(0);
  });
});

describe('drawLane(context, lane, strength, unit)', () => {
  const lane: LaneShape = {
    inward: [
      { x: 120, y: 20 },
      { x: 130, y: 90 },
      { x: 120, y: 180 },
    ],
    outward: [
      { x: 80, y: 20 },
      { x: 90, y: 90 },
      { x: 80, y: 180 },
    ],
  };

  it.each(['full', 'faint'] as const)(
    'draws its edges (%s), and leaves the leg between them its colour',
    (strength) => {
      const { context, pixel } = sheet();
      drawLane(context, lane, strength, 2);
      expect(pixel(100, 100)[3]).toBe(0);
      expect(pixel(60, 100)[3]).toBe(0);
      expect(pixel(90, 90)[3]!).toBeGreaterThan(40);
      expect(pixel(130, 90)[3]!).toBeGreaterThan(40);
    },
  );

  it('draws less where it is faint', () => {
    const inkedAt = (strength: 'full' | 'faint') => {
      const { context, inked } = sheet();
      drawLane(context, lane, strength, 2);
      return inked();
    };
    expect(inkedAt('faint')).toBeLessThan(inkedAt('full'));
  });
});

describe('drawLegAt(context, scene, timeMs, unit)', () => {
  const { track, frames } = filmPerson({
    side: 'left',
    repetitions: [{ peakDeg: 4 }, { peakDeg: 18 }],
    rateHz: 25,
  });
  const measurement = measure(track, { task: 'single-leg-squat', side: 'left' });
  const scene = { track, measurement, limits: defaultLimits, sureness: usualSureness };

  it('draws the knee where it was seen at that time', () => {
    const { context, pixel } = sheet(track.widthPx, track.heightPx);
    const at = frames[10]!;
    drawLegAt(context, scene, at.timeMs, 1);
    const seen = at.points.left_knee;
    expect(pixel(seen.xPx, seen.yPx).slice(0, 3)).toEqual(rgb(verdictColours['in']));
  });

  it('draws no lane from a view that is turned too far', () => {
    const inkedWithout = (reason: MissingReason) => {
      const { context, inked } = sheet(track.widthPx, track.heightPx);
      const { values, missing } = measurement.curves['knee-angle'];
      const none = { values, missing: missing.slice().fill(reasonCode(reason)) };
      drawLegAt(
        context,
        { ...scene, measurement: { ...measurement, curves: { ...measurement.curves, 'knee-angle': none } } },
        400,
        1,
      );
      return inked();
    };
    expect(inkedWithout('view-turned')).toBeLessThan(inkedWithout('thigh-foreshortened'));
  });

  it('draws nothing where nobody was seen', () => {
    const { context, inked } = sheet();
    const nobody = { ...track, score: new Float32Array(track.score.length) };
    drawLegAt(context, { ...scene, track: nobody }, 400, 1);
    expect(inked()).toBe(0);
  });
});
