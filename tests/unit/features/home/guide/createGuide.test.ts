import { describe, expect, it } from 'vitest';
import { createGuide } from '#features/home/guide/createGuide';
import type { GuideEffect } from '#features/home/guide/guideEffect';
import { smallHold, smallItem } from '../../../../support/smallPlan';
import { optionsFor } from './walk';

describe('createGuide(options, nowMs, act)', () => {
  it('hands on what is wanted at once, from the first line on', () => {
    const wanted: GuideEffect[] = [];
    const guide = createGuide(optionsFor([smallItem()]), 0, (effect) => wanted.push(effect));
    expect(wanted.map(({ kind }) => kind)).toEqual(['say']);
    guide.send({ kind: 'press', press: 'stop-pain' });
    expect(wanted.map(({ kind }) => kind)).toEqual(['say', 'tone', 'say']);
    expect(guide.view().phase).toBe('stopped');
  });

  it('takes in afterwards what comes back while it acts', () => {
    const phases: string[] = [];
    const guide = createGuide(optionsFor([smallItem()]), 0, (effect) => {
      if (effect.kind !== 'tone') return;
      phases.push(guide.state().phase);
      guide.send({ kind: 'press', press: 'end' });
      phases.push(guide.state().phase);
    });
    guide.send({ kind: 'press', press: 'pause' });
    expect(phases).toEqual(['paused', 'paused', 'stopped', 'stopped']);
  });

  it('continues after an effect that threw', () => {
    const guide = createGuide(optionsFor([smallHold()]), 0, (effect) => {
      if (effect.kind === 'tone') throw new Error('no sound');
    });
    expect(() => guide.send({ kind: 'press', press: 'pause' })).toThrow('no sound');
    guide.send({ kind: 'press', press: 'resume' });
    expect(guide.view().phase).toBe('ready');
  });
});
