import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames } from '../../../src/keypoints/keypointNames';
import { measure } from '../../../src/measurement/measure';
import { findTask, type TaskId } from '../../../src/protocol/tasks';
import { createLiveCounter } from '../../../src/segmentation/createLiveCounter';
import { filmPerson, type Film, type Scene } from '../../support/syntheticPerson';

const rateHz = 30;
/** A repetition is counted within so long after its true end: half of what a spoken count may lag. */
const longestDelayMs = 250;

/** Counts a film as it comes in; returns the time at which each count was reached. */
function countLive({ track, frames }: Film, task: TaskId): number[] {
  const counter = createLiveCounter(findTask(task), rateHz);
  const hips = ['left_hip', 'right_hip'] as const;
  const reachedMs: number[] = [];
  frames.forEach(({ timeMs }, frame) => {
    const [left, right] = hips.map((hip) => track.yPx[frame * keypointCount + keypointNames.indexOf(hip)]!);
    // Any scale close to the leg's length will do; the range that makes a repetition is a share of it.
    const count = counter.push(-(left! + right!) / 2 / 380);
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
];

describe('createLiveCounter(task, rateHz).push(hipHeight)', () => {
  it.each(scenes)('counts %s as the review does, each soon after its end', (_, scene) => {
    const film = filmPerson({ ...scene, rateHz });
    const reachedMs = countLive(film, scene.task);
    const reviewed = measure(film.track, { task: scene.task, side: 'left' }).repetitions;
    const complete = reviewed.filter(({ completeness }) => completeness === 'complete');
    expect(reachedMs).toHaveLength(complete.length);
    expect(reachedMs).toHaveLength(film.repetitions.length);
    film.repetitions.forEach(({ events }, i) => {
      expect(reachedMs[i]! - events.endMs!).toBeLessThan(longestDelayMs);
    });
  });

  it('counts nothing while the person stands still', () => {
    const counter = createLiveCounter(findTask('single-leg-squat'), rateHz);
    for (let i = 0; i < 100; i++) expect(counter.push(1 + 0.01 * Math.sin(i))).toBe(0);
  });
});
