import { describe, expect, it } from 'vitest';
import { measureCorrected } from '#core/correction/measureCorrected';
import { placePoint } from '#core/correction/placePoint';
import { frameLeg } from '#core/keypoints/frameLeg';
import { nearestFrame } from '#core/scoring/nearestFrame';
import { angleChangeDeg, jointStep, stepPx } from '#features/review/rules/jointStep';
import { filmPerson } from '../../../../support/syntheticPerson';

describe('jointStep(from, key, isFast)', () => {
  it('moves by half a pixel, ten times as far with Shift, and for no other key', () => {
    expect(jointStep({ x: 10, y: 20 }, 'ArrowLeft', false)).toEqual({ x: 9.5, y: 20 });
    expect(jointStep({ x: 10, y: 20 }, 'ArrowDown', true)).toEqual({ x: 10, y: 25 });
    expect(jointStep({ x: 10, y: 20 }, 'Enter', false)).toBeNull();
  });
});

describe('angleChangeDeg(before, after, side)', () => {
  const leg = { hip: { x: 0, y: 0 }, knee: { x: 0, y: 100 }, ankle: { x: 0, y: 200 }, heel: null, toe: null };

  it('is the angle that the knee gains towards the other one', () => {
    // Of the left leg inward is to the picture's left: 2 * atan(1 / 100) = 1.15 degrees.
    expect(angleChangeDeg(leg, { ...leg, knee: { x: -1, y: 100 } }, 'left')).toBeCloseTo(1.146, 3);
    expect(angleChangeDeg(leg, { ...leg, knee: { x: -1, y: 100 } }, 'right')).toBeCloseTo(-1.146, 3);
    expect(angleChangeDeg(leg, { ...leg, hip: null }, 'left')).toBeNull();
  });
});

/** How near to 1 degree the measured angle has to come; it is shown in whole degrees. */
const nearDeg = 0.35;

describe('a joint moved by the arrow keys', () => {
  it('changes the measured peak by 1 degree on purpose', () => {
    const setup = { task: 'single-leg-squat', side: 'left' } as const;
    const { track } = filmPerson({
      ...setup,
      repetitions: [{ peakDeg: 4 }, { peakDeg: 12 }],
      camera: { distanceM: 3, focalPx: 900 },
      rateHz: 25,
    });
    const peakOf = (corrections: Parameters<typeof measureCorrected>[2]) => {
      const { measurement } = measureCorrected(track, setup, corrections);
      return measurement.repetitions[1]!.ranges['knee-angle'].max!;
    };
    const before = peakOf([]);
    const frame = nearestFrame(track.timesMs, before.timeMs);
    const leg = frameLeg(track, frame, setup.side);
    let knee = leg.knee!;
    let steps = 0;
    while (angleChangeDeg(leg, { ...leg, knee }, setup.side)! < 1) {
      knee = jointStep(knee, 'ArrowLeft', false)!;
      steps++;
    }
    // Each press is less than the degree that is aimed at.
    expect(steps).toBeGreaterThan(1);
    expect(steps * stepPx).toBeLessThan(10);
    const place = { xNorm: knee.x / track.widthPx, yNorm: knee.y / track.heightPx };
    const change = placePoint('left_knee', { timeMs: track.timesMs[frame]!, ...place }, false);
    const after = peakOf([{ change }]);
    expect(Math.abs(after.value - before.value - 1)).toBeLessThan(nearDeg);
  });
});
