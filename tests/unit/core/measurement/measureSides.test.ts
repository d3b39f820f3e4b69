import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measureCorrected } from '#core/correction/measureCorrected';
import { findTask, taskIds, type TaskId } from '#core/exercises/exercises';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { secondJoints, type CloserFrame } from '#core/looks/closerLook';
import { combineLooks } from '#core/looks/combineLooks';
import { measure } from '#core/measurement/measure';
import { viewFromBends } from '#core/measurement/viewFromBends';
import { otherSide, sides, type Side } from '#core/protocol/side';
import { renamedTrack, sideTold, turnedTrack } from '../../../support/sideTold';
import { filmPerson, mirrorTrack } from '../../../support/syntheticPerson';

/** Tasks in which the legs do different things, so that the joints alone show which one works. */
const oneSided = taskIds.filter((id) => findTask(id).workingFoot !== 'either');

/** The knee of one leg goes far inward; the other stays in line. */
const filmed = fc.record({
  task: fc.constantFrom<TaskId>(...oneSided),
  side: fc.constantFrom<Side>(...sides),
  peakDeg: fc.integer({ min: 18, max: 24 }),
  yawDeg: fc.integer({ min: -10, max: 10 }),
  rollDeg: fc.integer({ min: -4, max: 4 }),
  heightM: fc.double({ min: 0.6, max: 1.3, noNaN: true }),
  noisePx: fc.constantFrom(0, 1),
  seed: fc.integer({ min: 1, max: 1000 }),
});
type Filmed = typeof filmed extends fc.Arbitrary<infer T> ? T : never;

function shoot({ peakDeg, yawDeg, rollDeg, heightM, ...rest }: Filmed, fromBehind = false): KeypointTrack {
  const camera = { yawDeg: yawDeg + (fromBehind ? 180 : 0), rollDeg, heightM, distanceM: 3 };
  return filmPerson({ ...rest, rateHz: 20, repetitions: [{ peakDeg }, { peakDeg }], camera }).track;
}

/**
 * Bends are read with the left leg as the working one, so the yaw of mirrored ones differs by 0.022 degrees at 12
 * degrees of yaw, and the peak by less than that. Bends that stay unmirrored move it by half a degree at 1 degree.
 */
const bendsDeg = 0.022;
const bothInward = ['inward', 'inward'];
/** Few runs: each films and measures some seconds of movement. */
const runs = { numRuns: 25 };

describe('left and right of a film', { timeout: 60_000 }, () => {
  const holds = (property: (wish: Filmed) => void) => fc.assert(fc.property(filmed, property), runs);

  it('are told as they are where it is filmed from the front', () => {
    holds((wish) => {
      const { task, side } = wish;
      const told = sideTold(measure(shoot(wish), { task, side }));
      expect(told).toEqual({ side, outOfLine: bothInward, isDoubted: false });
    });
  });

  it('are in doubt where the other leg was chosen', () => {
    holds((wish) => {
      const told = sideTold(measure(shoot(wish), { task: wish.task, side: otherSide(wish.side) }));
      expect(told.isDoubted).toBe(true);
    });
  });

  it('are in doubt where it is mirrored', () => {
    holds((wish) => {
      const { task, side } = wish;
      expect(sideTold(measure(mirrorTrack(shoot(wish)), { task, side })).isDoubted).toBe(true);
    });
  });

  it('are in doubt from behind, and no knee is out of line', () => {
    holds((wish) => {
      const { task, side } = wish;
      for (const track of [shoot(wish, true), mirrorTrack(shoot(wish, true))])
        expect(sideTold(measure(track, { task, side }))).toEqual({ side, outOfLine: [], isDoubted: true });
    });
  });

  it('are in doubt from behind where the network takes the back for a front, whichever leg was chosen', () => {
    holds((wish) => {
      const track = renamedTrack(shoot(wish, true));
      for (const side of sides)
        expect(sideTold(measure(track, { task: wish.task, side })).isDoubted).toBe(true);
    });
  });

  it.each([90, 180, 270] as const)('are in doubt in a picture turned by %d degrees', (deg) => {
    holds((wish) => {
      const { task, side } = wish;
      for (const track of [shoot(wish), mirrorTrack(shoot(wish))]) {
        const told = sideTold(measure(turnedTrack(track, deg), { task, side }));
        expect(told).toEqual({ side, outOfLine: [], isDoubted: true });
      }
    });
  });

  it('are told as they are once a mirrored film is marked as mirrored, or a wrong leg is switched', () => {
    holds((wish) => {
      const { task, side } = wish;
      const right = { side, outOfLine: bothInward, isDoubted: false };
      const told = (...[track, chosen, change]: Parameters<typeof corrected>) =>
        sideTold(corrected(track, chosen, change));
      const corrected = (
        track: KeypointTrack,
        chosen: Side,
        change: Parameters<typeof measureCorrected>[2][number]['change'],
      ) => measureCorrected(track, { task, side: chosen }, [{ change }]).measurement;
      const track = shoot(wish);
      expect(told(mirrorTrack(track), side, { kind: 'mirrored', isMirrored: true })).toEqual(right);
      expect(told(track, otherSide(side), { kind: 'working-side', side })).toEqual(right);
      expect(told(track, side, { kind: 'mirrored', isMirrored: true }).isDoubted).toBe(true);
    });
  });

  it('are told by the same view once bends and set are marked as mirrored', () => {
    fc.assert(
      fc.property(fc.constantFrom<Side>(...sides), fc.integer({ min: -12, max: 12 }), (side, yawDeg) => {
        const task = 'single-leg-squat';
        const camera = { yawDeg };
        const bend = { peakDeg: 3, movingMs: 3000 };
        const before = filmPerson({
          task: 'two-legged-bend',
          toeOutDeg: 15,
          camera,
          repetitions: [bend, bend],
        });
        const set = filmPerson({ task, side, toeOutDeg: 15, camera, repetitions: [{ peakDeg: 20 }] }).track;
        const seen = (mirrored: (track: KeypointTrack) => KeypointTrack, isMirrored: boolean) => {
          const bends = viewFromBends(mirrored(before.track)).view!;
          const setup = { task, side, bends } as const;
          return measureCorrected(mirrored(set), setup, [{ change: { kind: 'mirrored', isMirrored } }]);
        };
        const [plain, again] = [seen((track) => track, false), seen(mirrorTrack, true)];
        const peakOf = ({ measurement }: typeof plain) =>
          measurement.repetitions[0]!.ranges['knee-angle'].max!.value;
        expect(sideTold(again.measurement)).toEqual({ side, outOfLine: ['inward'], isDoubted: false });
        expect(Math.abs(peakOf(again) - peakOf(plain))).toBeLessThan(bendsDeg);
      }),
      { numRuns: 8 },
    );
  });

  it('stay as they are after a closer look, at the mirror image as well', () => {
    holds((wish) => {
      const { task, side } = wish;
      const track = shoot(wish);
      const seen = combineLooks(track, looksAt(track));
      expect(sideTold(measure(seen, { task, side }))).toEqual({
        side,
        outOfLine: bothInward,
        isDoubted: false,
      });
      expect(sideTold(measure(mirrorTrack(seen), { task, side })).isDoubted).toBe(true);
    });
  });

  it('stay as they are where a look takes one leg for the other', () => {
    holds((wish) => {
      const { task, side } = wish;
      const track = shoot(wish);
      const seen = combineLooks(track, looksAt(track, renamedTrack(track)));
      expect(sideTold(measure(seen, { task, side }))).toEqual({
        side,
        outOfLine: bothInward,
        isDoubted: false,
      });
    });
  });
});

/** Every third frame as networks see it that find the joints of `found`. */
function looksAt(track: KeypointTrack, found = track): CloserFrame[] {
  return Array.from({ length: Math.floor(track.timesMs.length / 3) }, (_, look): CloserFrame => {
    const frame = 3 * look;
    const row = Float32Array.from({ length: 3 * keypointCount }, (_, at) => {
      const values = [found.xPx, found.yPx, found.score][at % 3]!;
      return values[frame * keypointCount + Math.floor(at / 3)]!;
    });
    const second = Float32Array.from(
      secondJoints.flatMap((name) => [...row.subarray(...threeOf(keypointNames.indexOf(name)))]),
    );
    return { frame, mirrored: row, second, secondMirrored: second };
  });
}

const threeOf = (place: number): [number, number] => [3 * place, 3 * place + 3];
