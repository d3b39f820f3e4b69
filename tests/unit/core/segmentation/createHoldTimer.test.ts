import { describe, expect, it } from 'vitest';
import { quadPressHold } from '#core/exercises/each/quadPressHold';
import { createHoldTimer } from '#core/segmentation/createHoldTimer';

const hold = { seconds: 20, holds: 2, restSeconds: 15 };

describe('createHoldTimer(hold, startMs)', () => {
  it('counts a hold down to 0, rests, and holds again', () => {
    const timer = createHoldTimer(hold, 1000);
    expect(timer.at(1000)).toEqual({ phase: 'holding', hold: 1, secondsLeft: 20, heldMs: 0 });
    expect(timer.at(13_500)).toEqual({ phase: 'holding', hold: 1, secondsLeft: 8, heldMs: 12_500 });
    // 20 s of holding end at 21 s, where the rest begins with all of its 15; 4 s of rest have gone at 25 s.
    expect(timer.at(21_000)).toEqual({ phase: 'resting', hold: 1, secondsLeft: 15, heldMs: 20_000 });
    expect(timer.at(25_000)).toEqual({ phase: 'resting', hold: 1, secondsLeft: 11, heldMs: 20_000 });
    // The second hold begins at 36 s.
    expect(timer.at(36_000)).toEqual({ phase: 'holding', hold: 2, secondsLeft: 20, heldMs: 20_000 });
    expect(timer.at(56_000)).toEqual({ phase: 'done', hold: 2, secondsLeft: 0, heldMs: 40_000 });
  });

  it('leaves pauses out, however often pause and resume are called', () => {
    const timer = createHoldTimer(hold, 0);
    timer.pause(5000);
    timer.pause(6000);
    expect(timer.at(30_000)).toEqual({ phase: 'holding', hold: 1, secondsLeft: 15, heldMs: 5000 });
    timer.resume(35_000);
    timer.resume(36_000);
    expect(timer.at(37_000)).toEqual({ phase: 'holding', hold: 1, secondsLeft: 13, heldMs: 7000 });
  });

  it('does not run backwards before its start', () => {
    expect(createHoldTimer(hold, 9000).at(8000).heldMs).toBe(0);
  });

  it('accepts the dose of the press', () => {
    // Three holds of 30 s with two rests of 60 s: 3.5 minutes.
    const { holds, restSeconds } = quadPressHold.dose;
    const timer = createHoldTimer({ seconds: holds.seconds, holds: holds.count, restSeconds }, 0);
    expect(timer.at(209_999).phase).toBe('holding');
    expect(timer.at(210_000).phase).toBe('done');
  });
});
