import { describe, expect, it } from 'vitest';
import { nextStep } from '#core/programme/nextStep';
import type { Proposal } from '#core/programme/proposal';
import { nextStepSentence } from '#words/nextStepSentence';

const said = (proposal: Omit<Proposal, 'reasons'>, stage: string) =>
  nextStepSentence(nextStep({ ...proposal, reasons: [] }, { exercise: 'split-stance-sit-to-stand', stage }));

describe('nextStepSentence(step)', () => {
  it.each([
    [{ proposal: 'hold' }, 'seat-46', 'No exercise until the therapist has spoken to the patient.'],
    [
      { proposal: 'step-up' },
      'seat-50',
      'Proposed: stage 2 of 4. Seat 46 cm, back foot flat. It begins with 10 repetitions.',
    ],
    [
      { proposal: 'step-up' },
      'lower-on-one',
      'Proposed: single-leg sit-to-stand. Seat 50 cm, a fingertip on something firm. It begins with 10 repetitions.',
    ],
    [{ proposal: 'step-down' }, 'seat-50', 'This is the easiest stage. The rules name no next one.'],
    [{ proposal: 'stay' }, 'seat-46', 'Proposed: stage 2 of 4 again. Seat 46 cm, back foot flat.'],
    [
      { proposal: 'more', repetitions: 14 },
      'seat-46',
      'Proposed: stage 2 of 4 again with 14 repetitions. Seat 46 cm, back foot flat.',
    ],
    [
      { proposal: 'repeat' },
      'seat-46',
      'Proposed: a day of rest, then stage 2 of 4 again. Seat 46 cm, back foot flat.',
    ],
  ] as const)('%j at %s', (proposal, stage, sentence) => {
    expect(said(proposal, stage)).toBe(sentence);
  });

  it('has no harder stage after the last of an exercise that leads nowhere', () => {
    expect(nextStepSentence({ kind: 'no-harder' })).toBe(
      'This is the hardest stage. The rules name no next one.',
    );
  });

  it('does not count repetitions of a hold', () => {
    const hold = nextStep(
      { proposal: 'step-up', reasons: [] },
      { exercise: 'quad-press-hold', stage: 'light-15' },
    );
    expect(nextStepSentence(hold)).toBe('Proposed: stage 2 of 4. Press for 30 seconds, 3 times.');
  });
});
