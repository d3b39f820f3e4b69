import { describe, expect, it } from 'vitest';
import type { MeasurementNote } from '#core/measurement/measurement';
import { noteSentence } from '#words/noteSentence';
import { reasonWords } from '#words/reasonWords';
import { unfit } from '../../support/unfitWords';

describe('noteSentence(note)', () => {
  const notes: MeasurementNote[] = [
    { kind: 'no-person', framesWithPerson: 3, frames: 210 },
    { kind: 'no-repetitions' },
    { kind: 'legs-not-seen', reason: 'out-of-picture' },
    { kind: 'somebody-else', frames: 17 },
    { kind: 'side-doubtful', side: 'left' },
    { kind: 'few-frames', frameRateHz: 9.6 },
    { kind: 'view-turned', yawDeg: -31.4, sdDeg: 2.6 },
    { kind: 'not-facing', facing: 'back' },
    { kind: 'not-facing', facing: 'tipped' },
  ];
  it.each(notes)('says what, why and what to do for $kind', (note) => {
    const sentence = noteSentence(note);
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence.split(/[.:;] /).length).toBeGreaterThanOrEqual(2);
    expect(sentence).not.toMatch(unfit);
  });

  it('carries the numbers', () => {
    expect(noteSentence(notes[0]!)).toContain('3 of 210 frames');
    expect(noteSentence(notes[3]!)).toContain('17 frames');
    expect(noteSentence({ kind: 'somebody-else', frames: 1 })).toContain('In one frame somebody else');
    expect(noteSentence(notes[5]!)).toContain('10 frames a second');
    expect(noteSentence({ kind: 'few-frames', frameRateHz: 0.3 })).toContain('not even two frames a second');
  });

  it('says how far the body is turned and to which of its sides', () => {
    // Positive = the front points to the picture's right, which is the person's left.
    expect(noteSentence({ kind: 'view-turned', yawDeg: -31.4, sdDeg: 2.6 })).toContain(
      'turned about 31° (give or take 5°) to its right',
    );
    expect(noteSentence({ kind: 'view-turned', yawDeg: 28, sdDeg: 3 })).toContain('to its left');
  });

  it('names both legs where the side is doubtful', () => {
    expect(noteSentence({ kind: 'side-doubtful', side: 'left' })).toMatch(
      /left leg was chosen.*right leg is working/,
    );
    expect(noteSentence({ kind: 'side-doubtful', side: 'right' })).toMatch(
      /right leg was chosen.*left leg is working/,
    );
  });

  it('gives the advice that belongs to the reason', () => {
    expect(noteSentence({ kind: 'legs-not-seen', reason: 'joint-unseen' })).toContain(
      reasonWords('joint-unseen').advice,
    );
  });
});
