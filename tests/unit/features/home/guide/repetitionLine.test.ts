import { describe, expect, it } from 'vitest';
import { numberWord } from '#features/home/guide/numberWord';
import { repetitionLine } from '#features/home/guide/repetitionLine';

describe('numberWord(value)', () => {
  it.each([
    [0, 'zero'],
    [7, 'seven'],
    [13, 'thirteen'],
    [20, 'twenty'],
    [42, 'forty-two'],
    [100, 'one hundred'],
    [119, 'one hundred and nineteen'],
    [200, 'two hundred'],
    [945, 'nine hundred and forty-five'],
  ])('says %i as %s', (value, word) => {
    expect(numberWord(value)).toBe(word);
  });

  it('has a word of its own for every number', () => {
    const words = Array.from({ length: 1000 }, (_, value) => numberWord(value));
    expect(new Set(words).size).toBe(1000);
    for (const word of words) expect(word).toMatch(/^[a-z -]+$/);
  });
});

describe('repetitionLine(count, prescribed, heard, feedback, outsideSound)', () => {
  const outward = { verdict: 'out', direction: 'outward', cue: null, shortCue: null } as const;

  it('counts down the last three in words', () => {
    const lines = [6, 7, 8, 9, 10].map((count) => repetitionLine(count, 10, null, 'none', true).line);
    expect(lines).toEqual([
      'Six.',
      'Seven. Three more.',
      'Eight. Two more.',
      'Nine. One more.',
      'Ten. That was the last one.',
    ]);
  });

  it('says which way to move the knee, as heard and as read', () => {
    expect(repetitionLine(8, 10, outward, 'only-outside', true)).toEqual({
      line: 'Eight. Let the knee come in a little, over the foot. Two more.',
      caption: '8 of 10. Let the knee come in a little, over the foot. Two more.',
      tone: 'outside',
    });
  });

  it('says of each repetition how it went only where the plan asks for it', () => {
    const heard = { verdict: 'in', direction: 'inward', cue: null, shortCue: null } as const;
    expect(repetitionLine(1, 9, heard, 'every-repetition', true).line).toBe('One. Knee over the foot, good.');
    expect(repetitionLine(1, 9, heard, 'only-outside', true).line).toBe('One.');
    const near = { verdict: 'cant-tell', direction: 'inward', cue: null, shortCue: null } as const;
    expect(repetitionLine(1, 9, near, 'every-repetition', true).line).toBe('One.');
  });

  it('says nothing of what was not measured', () => {
    const unmeasured = { verdict: 'not-measured', direction: null, cue: null, shortCue: null } as const;
    expect(repetitionLine(1, 9, unmeasured, 'every-repetition', true)).toEqual({
      line: 'One.',
      caption: '1 of 9.',
      tone: 'tick',
    });
  });
});
