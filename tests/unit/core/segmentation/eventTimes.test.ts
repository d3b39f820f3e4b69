import { mean } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { findTask, taskIds, type TaskId } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { filmPerson, type Scene } from '../../../support/syntheticPerson';

/** Goal for the mean absolute error of all events. */
const goalMs = 150;

type Filmed = Partial<Omit<Scene, 'task' | 'side'>>;

function film(task: TaskId, scene: Filmed) {
  const { track, repetitions: truth } = filmPerson({ task, side: 'right', ...scene });
  const found = measure(track, { task, side: 'right' }).repetitions;
  return { truth, found, kinds: found.map(({ completeness }) => completeness) };
}

/** How far each event that both the truth and the finder have lies off, ms; both must have the same. */
function offMs({ truth, found }: ReturnType<typeof film>): number[] {
  expect(found).toHaveLength(truth.length);
  return found.flatMap(({ events }, i) =>
    Object.entries(events).flatMap(([name, atMs]) => {
      const trueMs = truth[i]!.events[name as keyof typeof events];
      expect([name, atMs === null]).toEqual([name, trueMs === null]);
      return atMs === null || trueMs === null ? [] : [Math.abs(atMs - trueMs)];
    }),
  );
}

const peaks = [{ peakDeg: 5 }, { peakDeg: 12 }, { peakDeg: 3 }];
const paced = (movingMs: number, pauseMs: number) =>
  peaks.map(({ peakDeg }) => ({ peakDeg, movingMs, pauseMs }));
const dips = taskIds.filter((id) => findTask(id).shape === 'dip');
const rises = taskIds.filter((id) => findTask(id).shape === 'rise');

describe.each(taskIds)('measure(track, setup) finds the events of a %s', (task) => {
  it.each<[string, Filmed]>([
    ['at the usual speed', { repetitions: paced(2600, 350) }],
    ['fast, 0.8 s each', { repetitions: paced(800, 0) }],
    ['fast with a stop at the far end', { repetitions: paced(800, 350) }],
    ['one after the other without rest', { restMs: 0 }],
    ['in a set of one', { repetitions: [{ peakDeg: 9 }] }],
    ['in trembling joints', { noisePx: 1.5, seed: 4 }],
    ['in 15 frames a second', { rateHz: 15 }],
    ['with false starts in between', { repetitions: [{ peakDeg: 0, share: 0.2 }, ...peaks] }],
  ])('%s, within 0.15 s on average', (_, scene) => {
    const result = film(task, scene);
    expect(new Set(result.kinds)).toEqual(new Set(['complete']));
    expect(mean(offMs(result))).toBeLessThan(goalMs);
  });

  it('and no events that the recording cuts off', () => {
    const result = film(task, { filmed: { fromMs: 2300, untilMs: 9900 } });
    expect(result.kinds).toEqual(['cut-at-start', 'complete', 'cut-at-end']);
    expect(result.truth.map(({ completeness }) => completeness)).toEqual(result.kinds);
    const whole = { ...result, truth: [result.truth[1]!], found: [result.found[1]!] };
    expect(mean(offMs(whole))).toBeLessThan(goalMs);
  });

  it.each<[string, Scene['repetitions'][number], string]>([
    ['a partial one', { peakDeg: 6, share: 0.6 }, 'partial'],
    ['a double bounce', { peakDeg: 6, bounceTo: 0.4 }, 'complete'],
    ['a stop of 6 s at the far end', { peakDeg: 6, pauseMs: 6000 }, 'complete'],
    ['a slow one among usual ones', { peakDeg: 6, movingMs: 7800 }, 'complete'],
  ])('counting %s once', (_, odd, kind) => {
    const { kinds, truth, found } = film(task, { repetitions: [peaks[0]!, odd, peaks[2]!] });
    expect(kinds).toEqual(['complete', kind, 'complete']);
    // Start and end are distinguished from the neighbours'.
    found.forEach(({ events }, i) => {
      const { startMs, endMs } = truth[i]!.events;
      expect(Math.abs(events.startMs - startMs!)).toBeLessThan(3 * goalMs);
      expect(Math.abs(events.endMs - endMs!)).toBeLessThan(3 * goalMs);
    });
  });
});

describe.each(taskIds)('measure(track, setup) of a %s', (task) => {
  it.each([
    ['into', { walkInFrom: 0.45 }],
    ['out of', { walkOutTo: -0.45 }],
    ['into and, from far away, out of', { walkInFrom: -0.45, walkOutTo: 1.2 }],
  ])('counts no steps while walking %s the place', (_, scene) => {
    const result = film(task, scene);
    expect(result.kinds).toEqual(['complete', 'complete', 'complete']);
    expect(mean(offMs(result))).toBeLessThan(goalMs);
  });

  it('puts the turning point in the middle of a long stop at the far end', () => {
    const { truth, found } = film(task, { repetitions: [{ peakDeg: 6, pauseMs: 4000 }] });
    const [{ events }] = found as [(typeof found)[number]];
    if (events.bottomMs === null) return;
    expect(Math.abs(events.bottomMs - truth[0]!.events.bottomMs!)).toBeLessThan(goalMs);
  });
});

describe.each(dips)('measure(track, setup) of a %s', (task) => {
  it('times a slow one, 7.8 s, within 0.15 s on average', () => {
    expect(mean(offMs(film(task, { repetitions: paced(7800, 0) })))).toBeLessThan(goalMs);
  });
});

describe.each(rises)('measure(track, setup) of a %s', (task) => {
  it('times the top of a slow one, 7.8 s, within 0.15 s', () => {
    const { truth, found } = film(task, { repetitions: paced(7800, 0) });
    found.forEach(({ events }, i) => {
      const { topMs } = truth[i]!.events;
      expect(Math.abs(events.topMs! - topMs!)).toBeLessThan(goalMs);
    });
  });
});
