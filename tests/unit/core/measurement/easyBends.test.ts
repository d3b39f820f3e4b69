import { describe, expect, it } from 'vitest';
import { buildKeypointTrack, frameRow, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { easyBends } from '#core/measurement/easyBends';
import { measure } from '#core/measurement/measure';
import { filmPerson, type Scene } from '../../../support/syntheticPerson';

const setup = { task: 'single-leg-squat', side: 'left' } as const;
const scene: Partial<Scene> = { side: 'left', noisePx: 0.5, toeOutDeg: 20, camera: { yawDeg: 9 } };
const bends = filmPerson({
  ...scene,
  task: 'two-legged-bend',
  repetitions: [{ peakDeg: 2 }, { peakDeg: 1 }],
});
const set = filmPerson({ ...scene, task: 'single-leg-squat' });

/** One recording after the other, as if the camera had gone on. */
function together(first: KeypointTrack, second: KeypointTrack): KeypointTrack {
  const laterMs = first.timesMs.at(-1)! + 40;
  const rows = [
    ...rowsOf(first),
    ...rowsOf(second).map(({ timeMs, row }) => ({ timeMs: timeMs + laterMs, row })),
  ];
  return buildKeypointTrack(first.widthPx, first.heightPx, rows);
}

function rowsOf(track: KeypointTrack) {
  return Array.from(track.timesMs, (timeMs, frame) => ({ timeMs, row: frameRow(track, frame) }));
}

describe('a recording that begins with two easy bends', () => {
  const whole = together(bends.track, set.track);

  it('shows by them how the body is turned, where the stance foot misleads', () => {
    const without = measure(set.track, setup).view!;
    const withBends = measure(whole, setup).view!;
    expect(withBends.cues.map(({ name }) => name)).toContain('bends');
    // The camera is 9 degrees towards the person's left, who is seen turned to the picture's left.
    expect(Math.abs(withBends.yawDeg + 9)).toBeLessThan(1.5);
    expect(Math.abs(without.yawDeg + 9)).toBeGreaterThan(2);
  });

  it('counts the set alone', () => {
    const { repetitions } = measure(whole, setup);
    expect(repetitions).toHaveLength(3);
    expect(repetitions[0]!.events.startMs).toBeGreaterThan(bends.track.timesMs.at(-1)! - 500);
  });

  it('keeps the setup as it was asked for', () => {
    expect(measure(whole, setup).setup).toEqual(setup);
  });
});

describe('easyBends(track, setup)', () => {
  it('finds none in a set that begins at once, on one leg', () => {
    expect(easyBends(set.track, setup)).toBeNull();
  });

  it('finds none in bends alone: then they are what was filmed', () => {
    expect(easyBends(bends.track, setup)).toBeNull();
  });

  it('does not look for any where the thighs tell the view, or where bends are known', () => {
    const whole = together(bends.track, set.track);
    expect(easyBends(whole, { task: 'split-stance-sit-to-stand', side: 'left' })).toBeNull();
    const known = { yawDeg: 1, sdDeg: 2, footDeg: { left: null, right: null } };
    expect(easyBends(whole, { ...setup, bends: known })).toBeNull();
  });
});
