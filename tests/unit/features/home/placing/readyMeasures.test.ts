import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findTask, taskIds } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { viewFromBends } from '#core/measurement/viewFromBends';
import { defaultLimits } from '#core/protocol/limits';
import { sides } from '#core/protocol/side';
import { judge } from '#core/scoring/judge';
import { checkPlacing } from '#features/home/placing/checkPlacing';
import { filmSeated, filmStanding } from '../../../../support/filmStill';
import { filmPerson } from '../../../../support/syntheticPerson';

const facts = { isFurniturePlaced: true, brightness: { mean: 0.5, contrast: 0.2 } };
const repetitions = [4, 14, -6].map((peakDeg) => ({ peakDeg, movingMs: 3500 }));
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Phones and laptops, set up with care (spread 0.35) or anyhow (1), and people as they stand. */
const anyScene = fc
  .record({
    task: fc.constantFrom(...taskIds),
    side: fc.constantFrom(...sides),
    lens: fc.constantFrom(
      { widthPx: 720, heightPx: 1280, focalPx: 1229 },
      { widthPx: 720, heightPx: 1280, focalPx: 1000 },
      { widthPx: 1280, heightPx: 720, focalPx: 880 },
      { widthPx: 1280, heightPx: 720, focalPx: 700 },
    ),
    spread: fc.constantFrom(0.35, 1),
    yaw: within(-40, 40),
    distance: within(-1.3, 2),
    height: within(-0.6, 0.6),
    pitch: within(-8, 8),
    roll: within(-6, 6),
    aside: within(-0.7, 0.7),
    toeOut: within(0, 25),
    noise: within(0, 3),
    rateHz: fc.constantFrom(30, 30, 30, 12),
    isSeated: fc.boolean(),
    hasBends: fc.boolean(),
    seed: fc.nat(1000),
  })
  .map(({ task, side, lens, spread, seed, rateHz, ...other }) => ({
    setup: { task, side },
    isSeated: other.isSeated && findTask(task).shape === 'rise',
    hasBends: other.hasBends,
    scene: {
      side,
      seed,
      rateHz,
      toeOutDeg: 7 + (other.toeOut - 7) * spread,
      noisePx: other.noise * spread,
      camera: {
        ...lens,
        yawDeg: other.yaw * spread,
        distanceM: 2.8 + other.distance * spread,
        heightM: 0.8 + other.height * spread,
        pitchDeg: other.pitch * spread,
        rollDeg: other.roll * spread,
        offCentreM: other.aside * spread,
      },
    },
  }));

describe('ready', { timeout: 120_000 }, () => {
  it('means that a set filmed by the same camera is measured, whatever the camera; what would be refused is not ready', () => {
    const counts = { ready: 0, refused: 0 };
    fc.assert(
      fc.property(anyScene, ({ setup, scene, isSeated, hasBends }) => {
        const bent = hasBends
          ? viewFromBends(
              filmPerson({ ...scene, task: 'two-legged-bend', repetitions: repetitions.slice(1) }).track,
            ).view
          : null;
        const known = { ...setup, bends: bent ?? undefined };
        const { ready } = checkPlacing((isSeated ? filmSeated : filmStanding)(scene).track, known, facts);
        const measured = measure(filmPerson({ ...scene, ...setup, repetitions }).track, known);
        const reasons = measured.repetitions.map((one) => judge(one, measured, defaultLimits).reason);
        const isRefused =
          reasons.length < repetitions.length ||
          reasons.some((reason) => reason !== null) ||
          measured.notes.some(({ kind }) => kind === 'few-frames' || kind === 'legs-not-seen');
        if (ready) counts.ready++;
        if (isRefused) counts.refused++;
        expect([ready && isRefused, reasons]).toEqual([false, reasons]);
      }),
      { numRuns: 250, seed: 4 },
    );
    // Neither side of it is empty.
    expect(counts.ready).toBeGreaterThan(25);
    expect(counts.refused).toBeGreaterThan(25);
  });
});
