import { describe, expect, it } from 'vitest';
import { findTask, taskIds } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { filmPerson } from '../../../support/syntheticPerson';

describe.each(taskIds)('the far end of a %s', (task) => {
  const farEnds =
    findTask(task).shape === 'rise' ? (['topMs', 'topEndMs'] as const) : (['bottomMs'] as const);
  it.each([
    ['is found at once', {}],
    ['is found in the middle of a long stay', { pauseMs: 4000 }],
    ['is found in 0.8 s', { movingMs: 800 }],
    ['is the last one of a double bounce', { bounceTo: 0.5 }],
  ])('%s, within 0.15 s', (_, how) => {
    const repetitions = [{ peakDeg: 4, ...how }, { peakDeg: 13, ...how }, { peakDeg: 8 }];
    const film = filmPerson({ task, noisePx: 1, seed: 4, repetitions });
    const found = measure(film.track, { task, side: 'left' }).repetitions;
    expect(found).toHaveLength(3);
    film.repetitions.forEach(({ events }, index) => {
      for (const end of farEnds)
        expect(Math.abs(found[index]!.events[end]! - events[end]!), `${end} ${index}`).toBeLessThan(150);
    });
  });
});
