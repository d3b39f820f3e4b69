import { describe, expect, it } from 'vitest';
import { cautionsOf, mayGoOnWith, painAdvice } from '#documents/plan/cautions';
import { freePainLimit } from '#documents/plan/freeRecording';
import { kitList } from '#documents/plan/kitList';
import type { PlanDocument } from '#documents/plan/planDocument';
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

  it('has words of its own for a limit of 0', () => {
    expect(cautionsOf(smallPlan({ painLimit: 0 })).stop[0]).toBe('Stop at any pain.');
  });

  it.each([7, 8, 9, 10])('warns of strong pain where a plan allows %i', (painLimit) => {
    const cautions = cautionsOf(smallPlan({ painLimit }));
    expect(cautions.stop[0]).toBe('Stop when the pain goes above 6 out of 10.');
    expect(painAdvice('before', 6, cautions)).toBeNull();
    expect(painAdvice('before', 7, cautions)).toBe(
      'It hurts 7 out of 10 now, which is above 6. Do not exercise today.',
    );
  });

  it.each([
    { painLimit: 5, usualPain: 1, least: 3 },
    { painLimit: 5, usualPain: 3, least: 5 },
    { painLimit: 5, usualPain: 4, least: 5 },
    { painLimit: 8, usualPain: 6, least: 6 },
  ])('warns above $least for a limit of $painLimit and a usual pain of $usualPain', ({ least, ...plan }) => {
    expect(cautionsOf(smallPlan(plan)).painLimit).toBe(least);
  });

  it('contacts a professional where the plan has no words for a knee that gives way', () => {
    expect(cautionsOf(smallPlan()).ifItGivesWay).toBe('Sit down and call the practice.');
    expect(cautionsOf(smallPlan({ ifItGivesWay: ' ' })).ifItGivesWay).toMatch(/therapist or doctor has seen/);
    expect(cautionsOf(null).ifItGivesWay).toMatch(/therapist or doctor has seen/);
  });
});

describe('painAdvice(when, score, cautions)', () => {
  const cautions = cautionsOf(smallPlan({ painLimit: 4 }));

  it('is silent up to the limit', () => {
    expect(painAdvice('before', 0, cautions)).toBeNull();
    expect(painAdvice('after', 4, cautions)).toBeNull();
  });

  it('speaks of the time that was asked about', () => {
    expect(painAdvice('before', 5, cautions)).toMatch(/^It hurts 5 out of 10 now.* today\.$/);
    expect(painAdvice('during', 5, cautions)).toMatch(/^It hurt 5 out of 10 in this set.* for today\.$/);
    expect(painAdvice('after', 5, cautions)).toMatch(/^It hurts 5 out of 10 now.*too much for today\.$/);
  });
});

describe('mayGoOnWith(score, cautions)', () => {
  const mayGoOn = (score: number, change: Partial<PlanDocument>) =>
    mayGoOnWith(score, cautionsOf(smallPlan({ painLimit: 3, ...change })));

  it('is off unless the plan says so', () => {
    expect(mayGoOn(4, {})).toBe(false);
    expect(mayGoOnWith(3, cautionsOf(null))).toBe(false);
  });

  it('ends before strong pain, whatever the plan says', () => {
    expect([4, 6, 7, 10].map((score) => mayGoOn(score, { mayGoOnAbove: true }))).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(mayGoOn(7, { mayGoOnAbove: true, painLimit: 9 })).toBe(false);
  });

  it('ends two above the usual pain', () => {
    const plan = { mayGoOnAbove: true, usualPain: 2 };
    expect(mayGoOn(4, plan)).toBe(true);
    expect(mayGoOn(5, plan)).toBe(false);
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
