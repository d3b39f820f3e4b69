import { describe, expect, it } from 'vitest';
import { videoParts } from '#documents/parcel/videoPart';
import { videoWishSentence } from '#documents/plan/videoWishSentence';

const returnKeys = [`age1${'q'.repeat(58)}`];

describe('videoWishSentence(plan)', () => {
  it('says each wish in other words, and that the patient decides', () => {
    const sentences = videoParts.map((videoWish) => videoWishSentence({ videoWish, returnKeys }));
    expect(new Set(sentences).size).toBe(videoParts.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^When you send .* You decide each time/);
    expect(sentences[videoParts.indexOf('without-head')]).toContain('without your head');
  });

  it('says nothing without a wish, or where nothing can be sent', () => {
    expect(videoWishSentence({ videoWish: null, returnKeys })).toBeNull();
    expect(videoWishSentence({ videoWish: 'whole', returnKeys: [] })).toBeNull();
  });
});
