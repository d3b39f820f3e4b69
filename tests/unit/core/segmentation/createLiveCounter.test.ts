import { describe, expect, it } from 'vitest';
import { findTask, type TaskId } from '#core/exercises/exercises';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { measure } from '#core/measurement/measure';
import { seededRandom } from '#core/seededRandom';
import { createLiveCounter } from '#core/segmentation/createLiveCounter';
import { findExcursions } from '#core/segmentation/findExcursions';
import { excursionLevels } from '#core/segmentation/findRepetitions';
import { scaleToExcursion } from '#core/segmentation/scaleToExcursion';
import { butterworthLowPass } from '#core/signal/butterworthLowPass';
import { createCausalLowPass } from '#core/signal/createCausalLowPass';
import { filmPerson, type Film, type Scene } from '../../../support/syntheticPerson';

const rateHz = 30;
/** A repetition is counted within so long after its true end: half of what a spoken count may lag. */
const longestDelayMs = 250;
/** Any length close to the leg's will do; the range that makes a repetition is a share of it. */
const legLengthPx = 380;

/** Counts a film as it comes in; returns the time at which each count was reached. */
function countLive({ track, frames }: Film, task: TaskId): number[] {
  const counter = createLiveCounter(findTask(task));
  const hips = ['left_hip', 'right_hip'] as const;
  const reachedMs: number[] = [];
  frames.forEach(({ timeMs }, frame) => {
    const [left, right] = hips.map((hip) => track.yPx[frame * keypointCount + keypointNames.indexOf(hip)]!);
    const count = counter.push(timeMs, -(left! + right!) / 2, legLengthPx);
    if (count > reachedMs.length) reachedMs.push(timeMs);
  });
  return reachedMs;
}

const scenes: [string, Partial<Scene> & { task: TaskId }][] = [
  ['sit-to-stands', { task: 'split-stance-sit-to-stand' }],
  ['squats', { task: 'single-leg-squat' }],
  ['step-downs', { task: 'lateral-step-down' }],
  ['noisy squats', { task: 'single-leg-squat', noisePx: 2, seed: 5 }],
  [
    'squats walked into and out of the picture',
    { task: 'single-leg-squat', walkInFrom: 0.3, walkOutTo: -0.3 },
  ],
  ['squats at 12 uneven frames a second', { task: 'single-leg-squat', rateHz: 12, unevenness: 0.45 }],
  [
    'sit-to-stands of which every fifth frame is lost',
    { task: 'split-stance-sit-to-stand', rateHz: 15, unevenness: 0.3, droppedShare: 0.2, seed: 3 },
  ],
  ['squats at 60 frames a second', { task: 'single-leg-squat', rateHz: 60 }],
];

describe('createLiveCounter(task).push(timeMs, movementPx, legLengthPx)', () => {
  it.each(scenes)('counts %s as the review does, each soon after its end', (_, scene) => {
    const film = filmPerson({ rateHz, ...scene });
    const reachedMs = countLive(film, scene.task);
    const reviewed = measure(film.track, { task: scene.task, side: 'left' }).repetitions;
    const complete = reviewed.filter(({ completeness }) => completeness === 'complete');
    expect(reachedMs).toHaveLength(complete.length);
    expect(reachedMs).toHaveLength(film.repetitions.length);
    film.repetitions.forEach(({ events }, i) => {
      expect(reachedMs[i]! - events.endMs!).toBeLessThan(longestDelayMs);
    });
  });

  it('gives at every sample the count over all samples so far', () => {
    const random = seededRandom(8);
    const task = findTask('single-leg-squat');
    const counter = createLiveCounter(task);
    const smooth = createCausalLowPass(butterworthLowPass(6, rateHz, 1));
    const heights: number[] = [];
    for (let i = 0; i < 900; i++) {
      const movementPx = 40 * Math.cos(i / 19) * (1 + 0.4 * Math.sin(i / 130)) + 2 * random.gaussian();
      heights.push(smooth(movementPx / legLengthPx));
      const excursion = scaleToExcursion(task, Float64Array.from(heights));
      const expected = findExcursions(excursion ?? [], excursionLevels).filter(
        ({ cut, farStart }) => cut === 'none' && farStart !== null,
      );
      expect(counter.push((i * 1000) / rateHz, movementPx, legLengthPx)).toBe(expected.length);
    }
  });

  it('counts every one of the noisy bends of three minutes', () => {
    const random = seededRandom(2);
    const counter = createLiveCounter(findTask('single-leg-squat'));
    let count = 0;
    for (let i = 0; i < 5400; i++) {
      const movementPx = 40 * Math.cos((2 * Math.PI * i) / 120) + random.gaussian();
      count = counter.push((i * 1000) / rateHz, movementPx, legLengthPx);
    }
    expect(count).toBe(45);
  });

  it('holds the last height while the hips are unseen', () => {
    const counter = createLiveCounter(findTask('single-leg-squat'));
    const seen = (i: number) => 40 * Math.cos((2 * Math.PI * i) / 120);
    let count = 0;
    for (let i = 0; i < 480; i++) {
      const isUnseen = i % 120 > 20 && i % 120 < 30;
      count = counter.push((i * 1000) / rateHz, isUnseen ? null : seen(i), legLengthPx);
    }
    expect(count).toBe(4);
  });

  it('counts nothing while the person stands still, or was never seen', () => {
    const counter = createLiveCounter(findTask('single-leg-squat'));
    for (let i = 0; i < 100; i++) expect(counter.push(i * 33, 380 + 3.8 * Math.sin(i), legLengthPx)).toBe(0);
    const blind = createLiveCounter(findTask('single-leg-squat'));
    for (let i = 0; i < 100; i++) expect(blind.push(i * 33, null, legLengthPx)).toBe(0);
  });
});
