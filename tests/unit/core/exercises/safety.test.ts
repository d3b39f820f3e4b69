import { describe, expect, it } from 'vitest';
import { holdIds } from '#core/exercises/holds';
import { needIds, needWords } from '#core/exercises/needs';
import { effortWords, painWords, scaleQuestions } from '#core/safety/painScale';
import { redFlags } from '#core/safety/redFlags';
import { findTask, taskIds } from '#core/exercises/tasks';
import { findSetup } from '#core/exercises/taskSetups';
import { sides } from '#core/protocol/side';
import { unfit } from '../../../support/unfitWords';

const all = [...taskIds, ...holdIds];

describe('findSetup(task, side)', () => {
  it.each(all)('speaks of %s in whole sentences, for either side', (task) => {
    for (const side of sides) {
      const { setUp, startLine, camera } = findSetup(task, side);
      for (const sentence of [...setUp, startLine, camera ?? 'None.']) {
        expect(sentence).toMatch(/^[A-Z][^{}]*\.$/);
        expect(sentence).not.toMatch(unfit);
      }
    }
  });

  it('names the working side and the other one', () => {
    expect(findSetup('split-stance-sit-to-stand', 'left').setUp).toContain(
      'Put your left foot in front and your right foot a little behind it.',
    );
  });

  it('begins seated where there is a seat, and asks for the chair there alone', () => {
    for (const task of taskIds) {
      const { start, needs } = findSetup(task, 'right');
      expect(start).toBe(findTask(task).shape === 'rise' ? 'seated' : 'standing');
      expect(needs.includes('chair')).toBe(start === 'seated');
    }
  });

  it('asks for easy bends exactly where the view is told from a stance foot and not from both thighs', () => {
    for (const task of taskIds) {
      const { viewSigns } = findTask(task);
      const fromOneFoot = viewSigns.includes('stance-foot') && !viewSigns.includes('thighs');
      expect(findSetup(task, 'right').easyBends).toBe(fromOneFoot);
    }
  });
});

describe('needWords', () => {
  it('has a sentence for each', () => {
    for (const need of needIds) expect(needWords[need].sentence).toMatch(/^[A-Z].*\.$/);
  });
});

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
