import { describe, expect, it } from 'vitest';
import type { FeedbackMode } from '#core/protocol/feedback';
import { freeRecording } from '#documents/plan/freeRecording';
import type { HeardVerdict } from '#features/home/guide/guideEvent';
import { toldOf } from '#features/home/screens/toldOf';

const item = (feedback: FeedbackMode) => ({
  ...freeRecording({ task: 'single-leg-squat', side: 'left', sets: 1, repetitions: 5 }),
  feedback,
});
const inLine: HeardVerdict = { verdict: 'in', direction: 'outward', cue: null, shortCue: null };
const outside: HeardVerdict = { verdict: 'out', direction: 'inward', cue: null, shortCue: null };

describe('toldOf(heard, item)', () => {
  it('reports every repetition where the plan wants it', () => {
    expect(toldOf(inLine, item('every-repetition'))).toBe(inLine);
  });

  it('reports only those outside the lane where the plan wants that', () => {
    expect(toldOf(inLine, item('only-outside'))).toBeNull();
    expect(toldOf(outside, item('only-outside'))).toBe(outside);
  });

  it('reports nothing while the plan keeps feedback for later, or wants none', () => {
    expect(toldOf(outside, item('after-the-set'))).toBeNull();
    expect(toldOf(outside, item('none'))).toBeNull();
  });

  it('reports nothing where nothing is known', () => {
    expect(toldOf(null, item('every-repetition'))).toBeNull();
  });
});
