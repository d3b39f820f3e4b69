import { mean } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { findTask, type Task } from '#core/exercises/exercises';
import { sides } from '#core/protocol/side';
import { findRepetitions, type RepetitionSignals } from '#core/segmentation/findRepetitions';
import { scaleToExcursion } from '#core/segmentation/scaleToExcursion';
import { filmPerson, type Film, type Scene } from '../../../support/syntheticPerson';

const rise = findTask('split-stance-sit-to-stand');
const dip = findTask('single-leg-squat');

/** True heights as shares of a leg of 0.835 m, one a frame. */
function heightsOf({ frames }: Film, joint: 'hip' | 'shoulder'): Float64Array {
  return Float64Array.from(
    frames,
    ({ places }) => (places[`left_${joint}`].y + places[`right_${joint}`].y) / 2 / 0.835,
  );
}

function signalsOf(film: Film, task: Task): RepetitionSignals {
  return {
    timesMs: Float64Array.from(film.frames, ({ timeMs }) => timeMs),
    excursion: scaleToExcursion(task, heightsOf(film, 'hip')) ?? [],
    shoulderHeight: heightsOf(film, 'shoulder'),
    feet: sides.map((side) => ({
      x: Float64Array.from(film.frames, ({ places }) => places[`${side}_ankle`].x / 0.835),
      y: Float64Array.from(film.frames, ({ places }) => places[`${side}_ankle`].y / 0.835),
    })),
  };
}

function found(scene: Partial<Scene>) {
  const film = filmPerson(scene);
  const task = scene.task === 'split-stance-sit-to-stand' ? rise : dip;
  return { truth: film.repetitions, repetitions: findRepetitions(task, signalsOf(film, task)), film };
}

describe.each([
  ['rise', 'split-stance-sit-to-stand'],
  ['dip', 'single-leg-squat'],
] as const)('findRepetitions(task, signals) for a task that is a %s', (_, task) => {
  it.each([
    ['fast', 800],
    ['usual', 2600],
    ['slow', 9000],
  ])('finds all of %s repetitions', (_, movingMs) => {
    const repetitions = [1, 2, 3, 4].map((peakDeg) => ({ peakDeg, movingMs }));
    const result = found({ task, repetitions });
    expect(result.repetitions.map(({ completeness }) => completeness)).toEqual(new Array(4).fill('complete'));
  });

  it('finds repetitions of different speeds in one set, each within its true time', () => {
    const { truth, repetitions } = found({
      task,
      repetitions: [
        { peakDeg: 2, movingMs: 900 },
        { peakDeg: 4, movingMs: 6000 },
        { peakDeg: 3, movingMs: 1500 },
      ],
    });
    expect(repetitions).toHaveLength(3);
    repetitions.forEach(({ events }, i) => {
      const far = task === 'single-leg-squat' ? events.bottomMs! : events.topMs!;
      expect(far).toBeGreaterThan(truth[i]!.events.startMs!);
      expect(far).toBeLessThan(truth[i]!.events.endMs!);
    });
  });

  it('marks a partial repetition as partial and gives it no far end', () => {
    const { repetitions } = found({
      task,
      repetitions: [{ peakDeg: 2 }, { peakDeg: 3, share: 0.6 }, { peakDeg: 1 }],
    });
    expect(repetitions.map(({ completeness }) => completeness)).toEqual(['complete', 'partial', 'complete']);
    expect(repetitions[1]!.events).toMatchObject({ topMs: null, bottomMs: null });
  });

  it('counts a double bounce once', () => {
    const { repetitions } = found({ task, repetitions: [{ peakDeg: 2, bounceTo: 0.6 }, { peakDeg: 5 }] });
    expect(repetitions.map(({ completeness }) => completeness)).toEqual(['complete', 'complete']);
  });

  it('counts a long pause at the far end once', () => {
    const { repetitions } = found({ task, repetitions: [{ peakDeg: 2, pauseMs: 6000 }, { peakDeg: 5 }] });
    expect(repetitions.map(({ completeness }) => completeness)).toEqual(['complete', 'complete']);
  });

  it('skips a false start', () => {
    const { repetitions } = found({
      task,
      repetitions: [{ peakDeg: 0, share: 0.15 }, { peakDeg: 2 }, { peakDeg: 0, share: 0.2 }, { peakDeg: 5 }],
    });
    expect(repetitions).toHaveLength(2);
  });

  it('marks what the recording cuts off at either end', () => {
    // In the first repetition from 900 to 3850 ms the way out is over by 2300 ms, in the last, from 8600 ms, by 9900 ms.
    const { truth, repetitions } = found({ task, filmed: { fromMs: 2300, untilMs: 9900 } });
    expect(truth.map(({ completeness }) => completeness)).toEqual(['cut-at-start', 'complete', 'cut-at-end']);
    expect(repetitions.map(({ completeness }) => completeness)).toEqual([
      'cut-at-start',
      'complete',
      'cut-at-end',
    ]);
    expect(repetitions[0]!.events.seatOffMs).toBeNull();
    expect(repetitions[2]!.events.seatContactMs).toBeNull();
  });

  it('puts events in order and repetitions one after the other', () => {
    const { repetitions, film } = found({
      task,
      repetitions: [{ peakDeg: 3 }, { peakDeg: 4 }, { peakDeg: 5 }],
    });
    let last = 0;
    for (const { events, loadedFrom, loadedTo } of repetitions) {
      const { startMs, seatOffMs, topMs, topEndMs, bottomMs, seatContactMs, endMs } = events;
      const inOrder = [startMs, seatOffMs, topMs, topEndMs, bottomMs, seatContactMs, endMs].filter(
        (atMs) => atMs !== null,
      );
      expect(inOrder).toEqual(inOrder.toSorted((a, b) => a - b));
      expect(inOrder).toHaveLength(task === 'single-leg-squat' ? 3 : 6);
      expect(loadedFrom).toBeGreaterThanOrEqual(last);
      expect(loadedTo).toBeGreaterThan(loadedFrom);
      expect(loadedTo).toBeLessThan(film.frames.length);
      last = loadedTo;
    }
  });

  it('finds nothing while the body rests, or in an empty recording', () => {
    expect(found({ task, repetitions: [], restMs: 4000 }).repetitions).toEqual([]);
    const empty = new Float64Array();
    const signals = { timesMs: empty, excursion: [], feet: [], shoulderHeight: empty };
    expect(findRepetitions(task === 'single-leg-squat' ? dip : rise, signals)).toEqual([]);
  });

  it('times every event within 0.15 s of the truth on average, at several speeds', () => {
    const repetitions = [1200, 2600, 4000].map((movingMs) => ({ peakDeg: 5, movingMs, pauseMs: 0 }));
    const result = found({ task, repetitions });
    const offMs = result.repetitions.flatMap(({ events }, i) =>
      Object.entries(events).flatMap(([name, atMs]) => {
        const trueMs = result.truth[i]!.events[name as keyof typeof events];
        expect(atMs === null).toBe(trueMs === null);
        return atMs === null || trueMs === null ? [] : [Math.abs(atMs - trueMs)];
      }),
    );
    expect(offMs).toHaveLength(task === 'single-leg-squat' ? 9 : 18);
    expect(mean(offMs)).toBeLessThan(150);
  });

  it('starts with the lean before seat-off, or with the movement where there is no seat', () => {
    const repetitions = [
      { peakDeg: 5, movingMs: 3000 },
      { peakDeg: 5, movingMs: 5000 },
    ];
    const result = found({ task, repetitions });
    expect(result.repetitions).toHaveLength(2);
    result.repetitions.forEach(({ events, loadedFrom }, i) => {
      const { startMs, seatOffMs } = result.truth[i]!.events;
      const loadedMs = result.film.frames[loadedFrom]!.timeMs;
      if (seatOffMs === null) expect(Math.abs(events.startMs - loadedMs)).toBeLessThan(40);
      else expect(loadedMs - events.startMs).toBeGreaterThan((seatOffMs - startMs!) / 2);
    });
  });

  it('does not depend on the height of the shoulders', () => {
    const which = task === 'single-leg-squat' ? dip : rise;
    const signals = signalsOf(filmPerson({ task }), which);
    const raised = { ...signals, shoulderHeight: signals.shoulderHeight.map((value) => value - 5) };
    const [before, after] = [findRepetitions(which, signals), findRepetitions(which, raised)];
    expect(after.map(({ completeness }) => completeness)).toEqual(
      before.map(({ completeness }) => completeness),
    );
    after.forEach(({ events }, i) => expect(events.startMs).toBeCloseTo(before[i]!.events.startMs, 3));
  });
});
