import { describe, expect, it } from 'vitest';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Setup } from '#core/measurement/measurement';
import { createPlacing } from '#features/home/placing/createPlacing';
import type { Placing } from '#features/home/placing/placing';
import { filmStanding } from '../../../../support/filmStill';
import { filmPerson } from '../../../../support/syntheticPerson';
import { trackUpTo } from '../../../../support/trackUpTo';

const setup: Setup = { task: 'single-leg-squat', side: 'left' };
const facts = { isFurniturePlaced: true, brightness: { mean: 0.5, contrast: 0.2 } };

/** Looks ten times a second, as a live picture does. */
function watch(track: KeypointTrack): { atMs: number; placing: Placing }[] {
  const live = createPlacing();
  const looks = Math.floor(track.timesMs.at(-1)! / 100);
  return Array.from({ length: looks }, (_, i) => {
    const atMs = 100 * (i + 1);
    return { atMs, placing: live.update(trackUpTo(track, atMs), setup, facts) };
  });
}

/** Films joined one after the other: somebody who is now here, now there. */
function joined(...tracks: KeypointTrack[]): KeypointTrack {
  const floats = (of: 'xPx' | 'yPx' | 'score') =>
    Float32Array.from(tracks.flatMap((track) => [...track[of]]));
  let fromMs = 0;
  const timesMs = tracks.flatMap((track) => {
    const times = [...track.timesMs].map((timeMs) => fromMs + timeMs);
    fromMs = times.at(-1)! + 1000 / 30;
    return times;
  });
  return {
    ...tracks[0]!,
    timesMs: Float64Array.from(timesMs),
    xPx: floats('xPx'),
    yPx: floats('yPx'),
    score: floats('score'),
  };
}

describe('createPlacing()', () => {
  it('goes green one second after nothing is in the way, and stays green', () => {
    const looks = watch(
      joined(filmStanding({ noisePx: 0.7 }).track, filmStanding({ noisePx: 0.7, seed: 2 }).track),
    );
    const firstGood = looks.find(({ placing }) => placing.first === null)!.atMs;
    const firstReady = looks.find(({ placing }) => placing.ready)!.atMs;
    expect(firstReady - firstGood).toBeGreaterThanOrEqual(1000 - 1000 / 30);
    expect(firstReady - firstGood).toBeLessThanOrEqual(1100);
    expect(looks.filter(({ atMs }) => atMs >= firstReady).every(({ placing }) => placing.ready)).toBe(true);
  });

  it('does not flicker for somebody who stands at a limit', () => {
    const film = (offCentreM: number, seed: number) =>
      filmStanding({ camera: { offCentreM }, noisePx: 1, seed }).track;
    // From well within 4.5 degrees to either side of it and back: 0.18 m and 0.235 m at 2.7 m are 3.8 and 5 degrees.
    const looks = watch(joined(film(0.18, 1), film(0.235, 2), film(0.18, 3), film(0.235, 4)));
    const states = looks.map(({ placing }) => placing.ready);
    expect(states.filter((ready, i) => i > 0 && ready !== states[i - 1])).toEqual([true]);
  });

  it('is not green any more as soon as somebody turns away', () => {
    const looks = watch(joined(filmStanding().track, filmStanding({ camera: { yawDeg: 24 } }).track));
    expect(looks.some(({ placing }) => placing.ready)).toBe(true);
    expect(looks.at(-1)!.placing).toMatchObject({ ready: false, first: { id: 'square' } });
  });

  it('says one thing for a second at least, unless it is done', () => {
    const { track } = filmPerson({
      task: 'two-legged-bend',
      walkInFrom: 0.5,
      repetitions: [],
      restMs: 4000,
      noisePx: 1,
    });
    const said = watch(track).map(({ atMs, placing }) => ({ atMs, id: placing.first?.id ?? null }));
    const changes = said.filter(({ id }, i) => i === 0 || id !== said[i - 1]!.id);
    expect(changes.length).toBeGreaterThan(1);
    changes.slice(1).forEach(({ atMs }, i) => {
      const before = changes[i]!;
      const stillTrue = watch(track)
        .filter((look) => look.atMs === atMs)
        .some(({ placing }) => placing.checks.some(({ id, state }) => id === before.id && state === 'move'));
      expect(atMs - before.atMs >= 1000 || !stillTrue).toBe(true);
    });
    expect(said.at(-1)!.id).toBeNull();
  });
});
