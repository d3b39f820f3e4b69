import { describe, expect, it } from 'vitest';
import { effortWords, painWords, scaleQuestions } from '#core/safety/painScale';
import { redFlags } from '#core/safety/redFlags';

describe('redFlags', () => {
  it('each leads to a professional, and names no disease', () => {
    for (const { words, advice } of redFlags) {
      expect(advice).toMatch(/^Do not exercise\. .*(doctor|therapist)/);
      expect(words).toMatch(/^[a-z].*[a-z]$/);
      expect(`${words} ${advice}`).not.toMatch(/thrombo|arthritis|fracture|infection|clot/i);
    }
    expect(new Set(redFlags.map(({ id }) => id)).size).toBe(redFlags.length);
  });
});

describe('painWords(score)', () => {
  it('grows with the score', () => {
    expect([0, 1, 3, 4, 6, 7, 9, 10].map(painWords)).toEqual([
      'no pain',
      'a little pain',
      'a little pain',
      'some pain',
      'some pain',
      'strong pain',
      'strong pain',
      'the worst pain you can think of',
    ]);
  });
});

describe('effortWords(score)', () => {
  it('grows with the score, and ends where the question says', () => {
    expect([0, 1, 3, 4, 6, 7, 9, 10].map(effortWords)).toEqual([
      'no effort at all',
      'light',
      'light',
      'medium',
      'medium',
      'hard',
      'hard',
      'as hard as I can',
    ]);
  });
});

describe('scaleQuestions', () => {
  it('are questions with both ends in words', () => {
    for (const { question, lowest, highest } of Object.values(scaleQuestions)) {
      expect(question).toMatch(/\?$/);
      expect(lowest).not.toBe(highest);
    }
  });
});
