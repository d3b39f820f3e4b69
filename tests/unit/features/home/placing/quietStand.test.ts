import { describe, expect, it } from 'vitest';
import { quietStand, type QuietStand } from '#features/home/placing/quietStand';
import { filmSeated, filmStanding } from '../../../../support/filmStill';
import { filmPerson, type Scene } from '../../../../support/syntheticPerson';

const stand = (scene: Partial<Scene> = {}) =>
  quietStand(filmStanding({ side: 'left', noisePx: 0.7, ...scene }).track);

function good(result: QuietStand) {
  if (result.problem !== null) throw new Error(result.sentence);
  return result;
}

describe('quietStand(window)', () => {
  it('gives the lengths of the segments as they are in the picture', () => {
    const { frames } = filmStanding({ side: 'left' });
    const { left_hip: hip, left_knee: knee, left_ankle: ankle } = frames[0]!.points;
    const { segmentsPx } = good(stand({ noisePx: 0 }));
    // The hip is found behind its mark, to half a per cent of the thigh.
    const thighPx = Math.hypot(knee.xPx - hip.xPx, knee.yPx - hip.yPx);
    expect(Math.abs(segmentsPx.left.thigh / thighPx - 1)).toBeLessThan(0.005);
    expect(segmentsPx.left.shank).toBeCloseTo(Math.hypot(ankle.xPx - knee.xPx, ankle.yPx - knee.yPx), 1);
  });

  it('gives what the leg reads while it stands, inward positive, to the parallax of a knee that is not locked', () => {
    for (const standingDeg of [-4, 0, 6]) {
      const { standingOffsetDeg } = good(stand({ standingDeg }));
      expect(Math.abs(standingOffsetDeg.left - standingDeg)).toBeLessThan(1.5);
    }
  });

  it('says how the body stands to the camera: to the right of it by 8 degrees', () => {
    const { yaw } = good(stand({ camera: { yawDeg: 8 } }));
    expect(Math.abs(yaw.yawDeg + 8)).toBeLessThan(yaw.sdDeg);
    expect(yaw.cues.map(({ name }) => name)).toContain('feet');
  });

  it('knows a trembling network from a steady one', () => {
    const [steady, trembling] = [good(stand({ noisePx: 0.3 })), good(stand({ noisePx: 1.5 }))];
    expect(trembling.jitter).toBeGreaterThan(3 * steady.jitter);
  });

  it('uses only the last two seconds', () => {
    const { track } = filmPerson({
      task: 'two-legged-bend',
      repetitions: [{ peakDeg: 3 }],
      restMs: 2600,
      noisePx: 0.7,
    });
    expect(quietStand(track).problem).toBeNull();
  });

  it.each<[string, QuietStand, QuietStand['problem'], RegExp]>([
    [
      'one second only',
      quietStand(filmStanding({ filmed: { fromMs: 0, untilMs: 1000 } }).track),
      'too-short',
      /two seconds/,
    ],
    ['nobody', quietStand(filmStanding({ camera: { pitchDeg: 60 } }).track), 'unseen', /can be seen/],
    [
      'a knee hidden',
      stand({ unseen: [{ joint: 'right_knee', fromMs: 500, untilMs: 9000 }] }),
      'unseen',
      /right knee/,
    ],
    ['feet out of the picture', stand({ camera: { pitchDeg: 13 } }), 'unseen', /foot/],
    ['somebody seated', quietStand(filmSeated().track), 'not-upright', /Stand upright/],
    [
      'a bend',
      quietStand(filmPerson({ task: 'two-legged-bend', repetitions: [{ peakDeg: 3 }], restMs: 300 }).track),
      'moved',
      /Stand still/,
    ],
    [
      'a leg that slides',
      quietStand(
        filmPerson({ task: 'sliding-leg-squat', side: 'left', repetitions: [{ peakDeg: 3 }], restMs: 300 })
          .track,
      ),
      'moved',
      /Your right foot moved/,
    ],
  ])('says of %s what does not hold, and what to do', (_, result, problem, says) => {
    expect(result.problem).toBe(problem);
    expect(result.problem === null ? '' : result.sentence).toMatch(says);
  });
});
