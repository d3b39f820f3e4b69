import { describe, expect, it } from 'vitest';
import { findTask } from '#core/exercises/exercises';
import { findRepetitions } from '#core/segmentation/findRepetitions';
import { scaleToExcursion } from '#core/segmentation/scaleToExcursion';

const rateHz = 30;

/** Hip heights of three squats of 0.13 leg lengths, 3 s each, and then whatever the last seconds hold. */
function squatsThen(end: (seconds: number) => number, endS: number): Float64Array {
  const squat = (t: number) => 1 - 0.13 * Math.sin(Math.PI * Math.min(1, Math.max(0, (t % 4) / 3))) ** 2;
  const samples = Math.round((12 + endS) * rateHz);
  return Float64Array.from({ length: samples }, (_, i) => {
    const t = i / rateHz;
    return t < 12 ? squat(t) : end(t - 12);
  });
}

function find(heights: Float64Array) {
  const task = findTask('single-leg-squat');
  return findRepetitions(task, {
    timesMs: Float64Array.from(heights, (_, i) => (i * 1000) / rateHz),
    excursion: scaleToExcursion(task, heights) ?? [],
    shoulderHeight: heights,
    feet: [{ x: new Float64Array(heights.length), y: new Float64Array(heights.length) }],
  }).map(({ completeness }) => completeness);
}

describe('findRepetitions(task, signals) after scaleToExcursion(task, movement)', () => {
  it('counts only the squats when the person sits down at the end and stays seated', () => {
    const sitting = squatsThen((s) => 1 - 0.45 * Math.min(1, s / 1.5), 6);
    expect(find(sitting)).toEqual(['complete', 'complete', 'complete', 'cut-at-end']);
  });

  it('counts them when the person stands still at the end', () => {
    expect(find(squatsThen(() => 1, 6))).toEqual(['complete', 'complete', 'complete']);
  });
});
