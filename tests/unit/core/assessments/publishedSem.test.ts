import { describe, expect, it } from 'vitest';
import { findAssessment } from '#core/assessments/assessments';
import { publishedSem } from '#core/assessments/publishedSem';

describe('publishedSem(assessment)', () => {
  it('is the typical error behind a published detectable change', () => {
    // Side bridge: 10.95 s; 1.96 sqrt 2 x 10.95 = 30.35, rounded to 30.4. Knee to wall: 1.9 / 2.7719 = .685.
    expect(publishedSem(findAssessment('side-bridge'))).toBeCloseTo(10.967, 2);
    expect(publishedSem(findAssessment('knee-to-wall'))).toBeCloseTo(0.685, 3);
  });

  it('is null where none is known, or the change is our choice', () => {
    expect(publishedSem(findAssessment('single-hop'))).toBeNull();
    expect(publishedSem(findAssessment('effusion'))).toBeNull();
  });
});
