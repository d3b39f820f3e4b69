import { describe, expect, it } from 'vitest';
import type { MeasuredView } from '#core/measurement/measurement';
import { viewSentence } from '#features/review/screens/viewSentence';

const seen = (yawDeg: number, sdDeg: number) =>
  viewSentence({
    view: { yawDeg, sdDeg, cues: [], focalPx: 900, rollDeg: 0, standingOffsetDeg: 0 } satisfies MeasuredView,
  });

describe('viewSentence(measurement)', () => {
  it('says from which side the camera viewed: the side that a turned body shows it', () => {
    expect(seen(-3.2, 1.6)).toContain('from about 3° to the person’s left, give or take 3°');
    expect(seen(12.7, 2.1)).toContain('from about 13° to the person’s right, give or take 4°');
    expect(seen(-3.2, 1.6)).toContain('seen square to the body');
  });

  it('omits the side where the camera was square', () => {
    expect(seen(0.9, 0.2)).toContain('the camera looked from straight ahead, give or take 1°');
  });

  it('gives no angle from a view that is turned too far or unknown', () => {
    expect(seen(28, 8)).toContain('No angle is given');
    expect(seen(28, 8)).not.toContain('square');
    expect(viewSentence({ view: null })).toContain('no angle is given');
  });
});
