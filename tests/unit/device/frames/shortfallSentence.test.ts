import { describe, expect, it } from 'vitest';
import type { VideoFacts } from '#device/frames/frameSource';
import { shortfallSentence } from '#device/frames/shortfallSentence';

const facts = { expectedFrames: 300 } as VideoFacts;

describe('shortfallSentence(facts, framesRead)', () => {
  it('says nothing where all frames came, or nearly all', () => {
    expect(shortfallSentence(facts, 300)).toBeNull();
    expect(shortfallSentence(facts, 294)).toBeNull(); // 2 % of 300
    expect(shortfallSentence({ ...facts, expectedFrames: 8 }, 6)).toBeNull();
  });

  it('says how many came where more are missing', () => {
    expect(shortfallSentence(facts, 293)).toMatch(/293 of 300 frames/);
    expect(shortfallSentence({ ...facts, expectedFrames: 8 }, 5)).toMatch(/5 of 8 frames/);
  });
});
