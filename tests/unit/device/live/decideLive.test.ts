import { describe, expect, it } from 'vitest';
import { decideLive } from '#device/live/decideLive';

describe('decideLive(fullFps, liteFps)', () => {
  it('uses the full model from 12 pictures a second, and says nothing', () => {
    expect(decideLive(12, null)).toEqual({ model: 'full', hasFeedback: true, sentence: null });
    expect(decideLive(30, null)).toEqual({ model: 'full', hasFeedback: true, sentence: null });
  });

  it('asks for the lite model where the full one is slower', () => {
    expect(decideLive(11.9, null)).toBeNull();
    expect(decideLive(0, null)).toBeNull();
  });

  it('uses the lite model from 8 pictures a second, and says nothing: there is nothing to do about it', () => {
    expect(decideLive(5, 8.7)).toEqual({ model: 'lite', hasFeedback: true, sentence: null });
  });

  it('turns live feedback off below that, and says that the recording continues', () => {
    const decision = decideLive(3, 7.99);
    expect(decision).toMatchObject({ model: 'lite', hasFeedback: false });
    expect(decision!.sentence).toContain('Count for yourself: your exercise is recorded');
    expect(decision!.sentence).not.toMatch(/\d|model|second/);
    expect(decideLive(0, 0)).toMatchObject({ hasFeedback: false });
  });
});
