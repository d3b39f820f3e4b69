import { describe, expect, it } from 'vitest';
import { cautionsOf, painAdvice } from '#documents/plan/cautions';
import { freePainLimit } from '#documents/plan/freeRecording';
import { kitList } from '#documents/plan/kitList';
import { tempoSentence } from '#documents/plan/tempoSentence';
import { smallHold, smallItem, smallPlan } from '../../../support/smallPlan';

describe('cautionsOf(plan)', () => {
  it("gives the plan's own limit and words", () => {
    const { stop, beyondPainLimit } = cautionsOf(smallPlan({ painLimit: 4 }));
    expect(stop[0]).toBe('Stop when the pain goes above 4 out of 10.');
    expect(beyondPainLimit).toBe('Stop and call the practice.');
  });

  it('is careful where there is no plan', () => {
    const { stop, beyondPainLimit, painLimit } = cautionsOf(null);
    expect(painLimit).toBe(freePainLimit);
    expect(stop[0]).toBe('Stop when the pain goes above 2 out of 10.');
    expect(beyondPainLimit).toMatch(/ask your therapist or doctor/);
  });

  it.each([
    [0, 'Stop at any pain.'],
    [10, 'Stop when the pain is more than you want to bear.'],
  ])('has words of its own for a limit of %i', (painLimit, sentence) => {
    expect(cautionsOf(smallPlan({ painLimit })).stop[0]).toBe(sentence);
  });
});

describe('painAdvice(score, cautions)', () => {
  const cautions = cautionsOf(smallPlan({ painLimit: 4 }));

  it('is silent up to the limit', () => {
    expect(painAdvice(0, cautions)).toBeNull();
    expect(painAdvice(4, cautions)).toBeNull();
  });

  it('says above it what the plan says', () => {
    expect(painAdvice(5, cautions)).toBe(
      'Your pain is 5 out of 10, above the limit of 4. Do not exercise now. Stop and call the practice.',
    );
  });
});

describe('kitList(items, footwear)', () => {
  it('names each thing once, with the footwear as prescribed', () => {
    const names = kitList([smallItem(), smallItem(), smallHold()], 'bare-feet').map(({ name }) => name);
    expect(names).toEqual([
      'Clear and dry floor',
      'Something to hold',
      'Chair against a wall',
      'Small soft ball',
      'Bare feet',
      'Visible knees',
    ]);
  });

  it('asks for no clothes that show the knees where nothing is filmed', () => {
    const names = kitList([smallHold()], 'shoes').map(({ name }) => name);
    expect(names).toEqual(['Clear and dry floor', 'Small soft ball', 'Shoes']);
  });
});

describe('tempoSentence(tempo, task)', () => {
  const tempo = { downSeconds: 3, pauseSeconds: 2, upSeconds: 1 };

  it('begins with the way up from a seat, with the way down from standing', () => {
    expect(tempoSentence(tempo, 'single-leg-sit-to-stand')).toBe(
      'Up in 1 second, stay for 2 seconds, down in 3 seconds.',
    );
    expect(tempoSentence(tempo, 'single-leg-squat')).toBe(
      'Down in 3 seconds, stay for 2 seconds, up in 1 second.',
    );
    expect(tempoSentence({ ...tempo, pauseSeconds: 0 }, 'hip-abduction-on-bent-leg')).toBe(
      'Out in 3 seconds, back in 1 second.',
    );
  });
});
