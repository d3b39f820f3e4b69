import { describe, expect, it } from 'vitest';
import { cameraRoll } from '#core/measurement/cameraRoll';
import { smoothPoints } from '#core/measurement/smoothPoints';
import { filmPerson } from '../../../support/syntheticPerson';

/** Trunk and a level camera weigh 1 / 2^2 and 1 / 1.5^2: of what the trunk shows, 0.36 counts. */
const trunkCounts = 0.36;

describe('cameraRoll(points, upright)', () => {
  const read = (rollDeg: number) => {
    const points = smoothPoints(filmPerson({ repetitions: [], restMs: 2000, camera: { rollDeg } }).track);
    return cameraRoll(points, new Uint8Array(points.timesMs.length).fill(1));
  };

  it.each([-6, 0, 4])('weighs a trunk leaning by %d degrees against a level camera', (rollDeg) => {
    // Perspective of a camera that looks up by 2 degrees adds a tenth.
    expect(Math.abs(read(rollDeg).rollDeg - trunkCounts * rollDeg)).toBeLessThan(0.1);
  });

  it('gives its uncertainty', () => {
    expect(read(3).sdDeg).toBeCloseTo(1.2, 9); // 1 / sqrt(1 / 4 + 1 / 2.25)
  });

  it('assumes a level camera where nobody is standing', () => {
    const points = smoothPoints(filmPerson({ repetitions: [], camera: { rollDeg: 5 } }).track);
    expect(cameraRoll(points, new Uint8Array(points.timesMs.length))).toEqual({ rollDeg: 0, sdDeg: 1.5 });
  });
});
