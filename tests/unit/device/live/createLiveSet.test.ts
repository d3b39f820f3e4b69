import { describe, expect, it } from 'vitest';
import { taskIds, type TaskId } from '#core/exercises/exercises';
import { keypointCount } from '#core/keypoints/keypointNames';
import { frameRow, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { measure } from '#core/measurement/measure';
import { defaultLimits } from '#core/protocol/limits';
import { kneeDirection } from '#core/scoring/deciding';
import { judge } from '#core/scoring/judge';
import { createLiveSet, type LiveSetEvent, type LiveSetOptions } from '#device/live/createLiveSet';
import type { LiveFrame } from '#device/live/liveFrame';
import { filmPerson, type Scene } from '../../../support/syntheticPerson';

/** The page's clock when the camera begins. */
const startMs = 41_000.5;
/** A repetition is counted within so long after its true end: half of what a spoken count may lag. */
const longestDelayMs = 250;

function framesOf(track: KeypointTrack): LiveFrame[] {
  const { widthPx, heightPx, timesMs } = track;
  return Array.from(timesMs, (timeMs, frame) => {
    const row = frameRow(track, frame);
    const isEmpty = row.every((value) => value === 0);
    return { timeMs: startMs + timeMs, row: isEmpty ? null : row, widthPx, heightPx };
  });
}

function setupOf(task: TaskId, { widthPx, heightPx }: KeypointTrack): LiveSetOptions {
  return { setup: { task, side: 'left' }, limits: defaultLimits, widthPx, heightPx, startMs };
}

function runLive(scene: Partial<Scene> & { task: TaskId }) {
  const film = filmPerson(scene);
  const set = createLiveSet(setupOf(scene.task, film.track));
  const events = framesOf(film.track).flatMap((frame) => set.push(frame));
  const counted = events.filter((event) => event.kind === 'counted');
  const judged = events.filter((event) => event.kind === 'judged');
  return { film, events, counted, judged, finished: set.finish() };
}

/** The first frames of a film, up to and with one time. */
function firstFrames(track: KeypointTrack, untilMs: number): KeypointTrack {
  const frames = track.timesMs.filter((timeMs) => timeMs <= untilMs + 1e-6).length;
  const points = (values: Float32Array) => values.slice(0, frames * keypointCount);
  return {
    ...track,
    timesMs: track.timesMs.slice(0, frames),
    xPx: points(track.xPx),
    yPx: points(track.yPx),
    score: points(track.score),
  };
}

describe('createLiveSet(setup).push(frame)', () => {
  it.each(taskIds)('counts each repetition of %s once, soon after its end', (task) => {
    const { film, counted, finished } = runLive({ task, rateHz: 24, noisePx: 1 });
    expect(counted.map(({ count }) => count)).toEqual([1, 2, 3]);
    expect(finished.count).toBe(3);
    film.repetitions.forEach(({ events }, i) => {
      expect(counted[i]!.timeMs - startMs - events.endMs!).toBeLessThan(longestDelayMs);
    });
  });

  const paces: [string, Partial<Scene>][] = [
    ['12 uneven frames a second', { rateHz: 12, unevenness: 0.45 }],
    ['10 frames a second of which every fifth is lost', { rateHz: 10, droppedShare: 0.2, seed: 11 }],
    ['60 frames a second', { rateHz: 60 }],
    ['two seconds without a frame', { dropped: [{ fromMs: 5200, untilMs: 7200 }] }],
    ['somebody else for a second', { somebodyElse: [{ fromMs: 900, untilMs: 1900 }] }],
  ];
  it.each(paces)('has the count of the review at the end, at %s', (_, scene) => {
    const { film, counted, finished } = runLive({ task: 'split-stance-sit-to-stand', ...scene });
    const reviewed = measure(film.track, { task: 'split-stance-sit-to-stand', side: 'left' }).repetitions;
    const complete = reviewed.filter(({ completeness }) => completeness === 'complete');
    expect(finished.count).toBe(complete.length);
    expect(counted.at(-1)?.count).toBe(complete.length);
    expect(complete.length).toBeGreaterThan(0);
  });

  it.each(taskIds)('judges %s as the review judges the frames so far', (task) => {
    const { film, judged } = runLive({ task, rateHz: 20, noisePx: 0.5 });
    expect(judged.map(({ count }) => count)).toEqual([1, 2, 3]);
    judged.forEach(({ timeMs, repetition, judgement, count }) => {
      const reviewed = measure(firstFrames(film.track, timeMs - startMs), { task, side: 'left' });
      const same = reviewed.repetitions[count - 1]!;
      expect(repetition).toEqual(same);
      expect(judgement).toEqual(judge(same, reviewed, defaultLimits));
    });
  });

  it('reports a repetition that left the limits, and only that', () => {
    const repetitions = [{ peakDeg: 2 }, { peakDeg: 22 }, { peakDeg: 3 }];
    const { judged } = runLive({ task: 'split-stance-sit-to-stand', repetitions });
    expect(judged.map(({ judgement }) => judgement.verdict)).toEqual(['in', 'out', 'in']);
    expect(kneeDirection(judged[1]!.judgement)).toBe('inward');
  });

  it('gives each verdict within a second of the count', () => {
    const { counted, judged } = runLive({ task: 'lateral-step-down' });
    judged.forEach(({ timeMs }, i) => {
      expect(timeMs - counted[i]!.timeMs).toBeGreaterThan(0);
      expect(timeMs - counted[i]!.timeMs).toBeLessThan(1000);
    });
  });

  it.each(['split-stance-sit-to-stand', 'single-leg-squat'] as const)(
    'tells nothing of %s before go, and counts what was begun after it, live as afterwards',
    (task) => {
      const { track, repetitions } = filmPerson({ task, rateHz: 20, noisePx: 0.5 });
      const set = createLiveSet({ ...setupOf(task, track), awaitsGo: true });
      // In the middle of the second one: the first was a rehearsal, and the second was begun before.
      const goMs = (repetitions[1]!.events.startMs! + repetitions[1]!.events.endMs!) / 2;
      const told = framesOf(track).flatMap((frame) => {
        const isBefore = frame.timeMs - startMs < goMs;
        if (!isBefore) set.go(startMs + goMs);
        const events = set.push(frame);
        if (isBefore) expect(events).toEqual([]);
        return events;
      });
      const finished = set.finish();
      expect(told.flatMap((event) => (event.kind === 'counted' ? event.count : []))).toEqual([1]);
      expect(finished.count).toBe(1);
      expect(finished.measurement.setup.goMs).toBeCloseTo(goMs, 6);
      expect(finished.measurement.repetitions[0]!.events.startMs).toBeGreaterThan(goMs);
      expect(told.filter(({ kind }) => kind === 'judged')).toHaveLength(1);
    },
  );

  it('counts by the hips where the working leg is never seen, a little later, and gives no verdict', () => {
    const unseen = (['left_knee', 'left_ankle'] as const).map((joint) => ({
      joint,
      fromMs: 0,
      untilMs: Infinity,
    }));
    const repetitions = Array.from({ length: 5 }, () => ({ peakDeg: 4 }));
    const { finished, counted, judged } = runLive({ task: 'single-leg-squat', unseen, repetitions });
    expect(finished.count).toBe(5);
    expect(counted.at(-1)!.count).toBeGreaterThanOrEqual(3);
    judged.forEach(({ judgement }) => expect(judgement.verdict).toBe('not-measured'));
  });

  it('leaves out frames from before the start, and the points of frames of another size', () => {
    const { track } = filmPerson({ task: 'single-leg-squat', rateHz: 20 });
    const frames = framesOf(track);
    const set = createLiveSet({ ...setupOf('single-leg-squat', track), startMs: frames[10]!.timeMs });
    const turned = { widthPx: track.heightPx, heightPx: track.widthPx };
    frames.forEach((frame, i) => set.push(i === 15 ? { ...frame, ...turned } : frame));
    const kept = set.finish().track;
    expect(kept.timesMs[0]).toBe(0);
    expect(kept.timesMs).toHaveLength(frames.length - 10);
    const scores = (frame: number) => kept.score.slice(frame * keypointCount, (frame + 1) * keypointCount);
    expect(scores(5).every((score) => score === 0)).toBe(true);
    expect(scores(6).every((score) => score > 0)).toBe(true);
  });

  it('counts nothing, and ends with a measurement, where nobody is seen or no frame comes', () => {
    const { track } = filmPerson({ task: 'single-leg-squat' });
    const set = createLiveSet(setupOf('single-leg-squat', track));
    expect(set.finish().count).toBe(0);
    const events: LiveSetEvent[] = framesOf(track)
      .slice(0, 200)
      .flatMap((frame) => set.push({ ...frame, row: null }));
    expect(events).toEqual([]);
    expect(set.finish().measurement.notes.map(({ kind }) => kind)).toEqual(['no-person']);
  });
});

describe('createLiveSet(setup).knee()', () => {
  it('is what the review says of the knee at the last frame, and never more than the repetition’s verdict', () => {
    const { track, repetitions } = filmPerson({
      task: 'single-leg-squat',
      repetitions: [
        { peakDeg: 1, movingMs: 3000 },
        { peakDeg: 24, movingMs: 3000 },
      ],
    });
    const set = createLiveSet(setupOf('single-leg-squat', track));
    expect(set.knee()).toBeNull();
    const seen = framesOf(track).flatMap((frame, index) => {
      set.push(frame);
      const knee = index % 10 === 0 ? set.knee() : null;
      return knee === null ? [] : { ...knee, timeMs: frame.timeMs - startMs };
    });
    const untilMs = repetitions[0]!.events.endMs!;
    const during = (isFirst: boolean) =>
      seen.filter(({ timeMs }) => timeMs <= untilMs === isFirst).map(({ verdict }) => verdict);
    expect(during(true)).toContain('in');
    expect(during(true)).not.toContain('out');
    expect(during(false)).toContain('out');
    expect(seen.find(({ verdict }) => verdict === 'out')!.direction).toBe('inward');
  });

  it('is not known before "go"', () => {
    const { track } = filmPerson({ task: 'single-leg-squat' });
    const set = createLiveSet({ ...setupOf('single-leg-squat', track), awaitsGo: true });
    framesOf(track).forEach((frame) => set.push(frame));
    expect(set.knee()).toBeNull();
  });
});
