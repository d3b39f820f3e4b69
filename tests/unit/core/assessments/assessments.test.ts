import { describe, expect, it } from 'vitest';
import { assessments, findAssessment } from '#core/assessments/assessments';
import { symmetryUnits } from '#core/change/limbSymmetry';
import { detectableChange95 } from '#core/statistics/detectableChange';

it('are told apart', () => {
  for (const key of ['id', 'name'] as const)
    expect(new Set(assessments.map((assessment) => assessment[key])).size).toBe(assessments.length);
});

describe.each(assessments)(
  '$id',
  ({ id, protocol, error, published, reliability, notTold, unit, better }) => {
    it('has a protocol that somebody else can repeat', () => {
      expect(protocol.steps.length).toBeGreaterThan(0);
      for (const step of protocol.steps) expect(step).toMatch(/^[A-Z0-9].*\.$/);
      expect(protocol.fixed.length).toBeGreaterThan(0);
      expect(protocol.tries.counted).toBeGreaterThan(0);
    });

    it('names a source or a year for all that is published', () => {
      for (const { source, population, value } of published) {
        expect(source).toMatch(/\d{4}/);
        expect(population).not.toBe('');
        expect(value).toMatch(/\d/);
      }
      for (const found of reliability) expect(found).toMatch(/\d{4}/);
      if (error !== null) {
        expect(error.detectable).toBeGreaterThan(0);
        expect(error.source).toMatch(/\d{4}|no source/);
      }
    });

    it('says what it does not tell', () => {
      expect(notTold.length).toBeGreaterThan(0);
      for (const sentence of notTold) expect(sentence).toMatch(/^[A-Z].*\.$/);
    });

    it('has a side that is more able wherever legs are put in percent', () => {
      // A longer leg is not the more able one, so its two lengths are never put in percent.
      const isAbility = (symmetryUnits as readonly string[]).includes(unit) && id !== 'leg-length';
      if (isAbility) expect(better).not.toBeNull();
    });
  },
);

it('takes the detectable change of the side bridge from its typical error', () => {
  // 1.96 x sqrt 2 x 10.95 = 30.35.
  expect(findAssessment('side-bridge').error!.detectable).toBeCloseTo(detectableChange95(10.95), 1);
});
