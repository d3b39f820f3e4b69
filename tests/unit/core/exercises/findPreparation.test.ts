import { describe, expect, it } from 'vitest';
import { exerciseIds, findTask, taskIds } from '#core/exercises/exercises';
import { findPreparation } from '#core/exercises/findPreparation';
import { needIds, needWords } from '#core/exercises/needs';
import { sides } from '#core/protocol/side';
import { unfit } from '../../../support/unfitWords';

describe('findPreparation(task, side)', () => {
  it.each(exerciseIds)('describes %s in whole sentences, for either side', (task) => {
    for (const side of sides) {
      const { steps, startLine, camera } = findPreparation(task, side);
      for (const sentence of [...steps, startLine, camera ?? 'None.']) {
        expect(sentence).toMatch(/^[A-Z][^{}]*\.$/);
        expect(sentence).not.toMatch(unfit);
      }
    }
  });

  it('names the working side and the other one', () => {
    expect(findPreparation('split-stance-sit-to-stand', 'left').steps).toContain(
      'Put your left foot in front and your right foot a little behind it.',
    );
  });

  it('begins seated where there is a seat, and asks for a chair only there', () => {
    for (const task of taskIds) {
      const { start, needs } = findPreparation(task, 'right');
      expect(start).toBe(findTask(task).shape === 'rise' ? 'seated' : 'standing');
      expect(needs.includes('chair')).toBe(start === 'seated');
    }
  });

  it('asks for easy bends exactly where a stance foot shows the view and both thighs do not', () => {
    for (const task of taskIds) {
      const { viewSigns } = findTask(task);
      const fromOneFoot = viewSigns.includes('stance-foot') && !viewSigns.includes('thighs');
      expect(findPreparation(task, 'right').easyBends).toBe(fromOneFoot);
    }
  });
});

describe('needWords', () => {
  it('has a sentence for each', () => {
    for (const need of needIds) expect(needWords[need].sentence).toMatch(/^[A-Z].*\.$/);
  });
});
