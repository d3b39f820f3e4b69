import { describe, expect, it } from 'vitest';
import { newSigns } from '#core/safety/newSigns';
import { effortWords, painWords, scaleQuestions } from '#core/safety/painScale';
import { findSign, otherSigns, redFlags } from '#core/safety/redFlags';
import { signIds } from '#core/safety/signs';

const all = [...redFlags, ...otherSigns];

describe('redFlags and otherSigns', () => {
  it('each leads to a professional, and names no disease', () => {
    for (const { words, advice } of all) {
      expect(advice).toMatch(/^Do not exercise(\.| until) .*(doctor|therapist)/);
      expect(words).toMatch(/^[a-z].*[a-z]$/);
      expect(`${words} ${advice}`).not.toMatch(/thrombo|arthritis|fracture|infection|clot|rupture/i);
    }
  });

  it('have words for every sign, once', () => {
    expect(all.map(({ id }) => id).sort()).toEqual([...signIds].sort());
    expect(findSign('calf').words).toMatch(/calf/);
  });
});

describe('newSigns', () => {
  it('are three questions, each answer of which is a sign of its own', () => {
    expect(newSigns).toHaveLength(3);
    const ids = newSigns.flatMap(({ signs }) => signs.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(findSign(id).advice).toMatch(/^Do not exercise/);
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
