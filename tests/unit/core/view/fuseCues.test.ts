import { describe, expect, it } from 'vitest';
import { fuseCues } from '#core/view/fuseCues';
import type { ViewCue } from '#core/view/viewCue';

const cue = (yawDeg: number, sdDeg: number): ViewCue => ({ name: 'thighs', yawDeg, sdDeg });

describe('fuseCues(cues)', () => {
  it('keeps a single reading as it is', () => {
    expect(fuseCues([cue(7, 2)])).toMatchObject({ yawDeg: 7, sdDeg: 2 });
  });

  it('weighs readings by the inverse of their variance', () => {
    // 8 and 5 with SD 2 and 1: weights 1/4 and 1; (2 + 5) / 1.25 = 5.6. They disagree by
    // (2.4 / 2)^2 + (0.6 / 1)^2 = 1.8 for one degree of freedom: SD = sqrt(1.8) / sqrt(1.25) = 1.2.
    const { yawDeg, sdDeg } = fuseCues([cue(8, 2), cue(5, 1)]);
    expect(yawDeg).toBeCloseTo(5.6, 12);
    expect(sdDeg).toBeCloseTo(1.2, 12);
  });

  it('widens by the disagreement for each reading beyond the first', () => {
    // 0, 3 and 6 with SD 1: 9 + 0 + 9 = 18 for two degrees of freedom, so 3 / sqrt 3.
    const { yawDeg, sdDeg } = fuseCues([cue(0, 1), cue(3, 1), cue(6, 1)]);
    expect(yawDeg).toBeCloseTo(3, 12);
    expect(sdDeg).toBeCloseTo(Math.sqrt(3), 12);
  });

  it('is more certain than either of two agreeing readings, but no more than their errors allow', () => {
    // 1 / sqrt(1/9 + 1/16) = 2.4; exact agreement does not make it smaller.
    const { yawDeg, sdDeg } = fuseCues([cue(-3, 3), cue(-3, 4)]);
    expect(yawDeg).toBeCloseTo(-3, 12);
    expect(sdDeg).toBeCloseTo(2.4, 12);
  });

  it('does not depend on the order, and changes sign when mirrored', () => {
    const cues = [cue(4, 1.5), cue(-2, 3), cue(9, 5)];
    const { yawDeg, sdDeg } = fuseCues(cues);
    expect(fuseCues(cues.toReversed()).yawDeg).toBeCloseTo(yawDeg, 12);
    const mirrored = fuseCues(cues.map((one) => cue(-one.yawDeg, one.sdDeg)));
    expect(mirrored.yawDeg).toBeCloseTo(-yawDeg, 12);
    expect(mirrored.sdDeg).toBeCloseTo(sdDeg, 12);
  });

  it('refuses to infer a yaw from no readings', () => {
    expect(() => fuseCues([])).toThrow(RangeError);
  });
});
