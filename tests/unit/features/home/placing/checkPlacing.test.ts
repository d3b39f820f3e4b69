import { describe, expect, it } from 'vitest';
import { taskIds } from '#core/exercises/exercises';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Setup } from '#core/measurement/measurement';
import { sides } from '#core/protocol/side';
import { checkPlacing } from '#features/home/placing/checkPlacing';
import { placingCheckIds, type PlacingArrow, type PlacingCheckId } from '#features/home/placing/placing';
import { wordsWidthEm } from '#features/home/screens/fitWords';
import { filmSeated, filmStanding } from '../../../../support/filmStill';
import { mirrorTrack, type Scene } from '../../../../support/syntheticPerson';
import { trackUpTo } from '../../../../support/trackUpTo';
import { unfit } from '../../../../support/unfitWords';

const facts = { isFurniturePlaced: true, brightness: { mean: 0.5, contrast: 0.2 } };
const squat: Setup = { task: 'single-leg-squat', side: 'left' };
const rise: Setup = { task: 'split-stance-sit-to-stand', side: 'left' };
const standing = (scene: Partial<Scene> = {}) => filmStanding({ side: 'left', noisePx: 0.7, ...scene }).track;
const seated = (scene: Partial<Scene> = {}) => filmSeated({ side: 'left', noisePx: 0.7, ...scene }).track;

/**
 * On a phone that is 70 mm wide with 64 mm for words, capitals (0.7 of the type size) of at least 14 mm: 16 minutes of
 * arc from 3 m, the least that ISO 9241-3 allows.
 */
const widestWordEm = 64 / (14 / 0.7);

type Fault = [what: string, track: KeypointTrack, id: PlacingCheckId, arrow: PlacingArrow, says: RegExp];

/** Everything that can be wrong, one by one; left and right are the person's own. */
const faults: Fault[] = [
  ['too near', standing({ camera: { distanceM: 1.6 } }), 'whole-body', 'farther', /^Step back/],
  ['much too near', standing({ camera: { distanceM: 1.2 } }), 'whole-body', 'farther', /^Step back/],
  ['too far', standing({ camera: { distanceM: 5 } }), 'distance', 'closer', /^Come closer by about/],
  // The camera's aim is to the left of the person, so that they are on the right in the picture: on their own left.
  ['too far left', standing({ camera: { offCentreM: 0.32 } }), 'middle', 'right', /to your right/],
  ['too far right', standing({ camera: { offCentreM: -0.32 } }), 'middle', 'left', /to your left/],
  ['half out, left', standing({ camera: { offCentreM: 0.6 } }), 'whole-body', 'right', /to your right/],
  ['half out, right', standing({ camera: { offCentreM: -0.6 } }), 'whole-body', 'left', /to your left/],
  // A camera on the person's left sees them turned to their right: the left shoulder has to go back.
  [
    'turned right',
    standing({ camera: { yawDeg: 18 } }),
    'square',
    'turn-left',
    /left shoulder a little back/,
  ],
  [
    'turned left',
    standing({ camera: { yawDeg: -18 } }),
    'square',
    'turn-right',
    /right shoulder a little back/,
  ],
  ['turned far', standing({ camera: { yawDeg: 32 } }), 'square', 'turn-left', /left shoulder back/],
  ['rolled', standing({ camera: { rollDeg: 6 } }), 'camera-level', 'tip-left', /on your right/],
  ['rolled back', standing({ camera: { rollDeg: -6 } }), 'camera-level', 'tip-right', /on your left/],
  [
    'feet out',
    standing({ camera: { pitchDeg: 13 } }),
    'whole-body',
    'down',
    /shoes are cut off. Tip .* down/,
  ],
  ['head out', standing({ camera: { pitchDeg: -16 } }), 'whole-body', 'up', /head is cut off. Tip .* up/],
  [
    'low camera',
    standing({ camera: { heightM: 0.1, pitchDeg: 0, distanceM: 3.4 } }),
    'camera-height',
    'up',
    /hips/,
  ],
  [
    'high camera',
    standing({ camera: { heightM: 1.7, pitchDeg: 0, distanceM: 3.8 } }),
    'camera-height',
    'down',
    /hips/,
  ],
  ['few frames', standing({ rateHz: 9 }), 'frame-rate', 'none', /Switch on more light/],
  ['trembling', standing({ noisePx: 16 }), 'light', 'none', /light from the front/],
  [
    'somebody else',
    standing({ somebodyElse: [{ fromMs: 1500, untilMs: 2000 }] }),
    'one-person',
    'none',
    /Only you/,
  ],
  ['toes out', standing({ toeOutDeg: 20 }), 'square', 'turn-right', /toes of your left foot a little inward/],
  [
    'knee hidden',
    standing({ unseen: [{ joint: 'left_knee', fromMs: 0, untilMs: 9000 }] }),
    'working-leg',
    'none',
    /Your left knee can’t be seen/,
  ],
  [
    'foot hidden',
    standing({ unseen: [{ joint: 'left_foot_index', fromMs: 0, untilMs: 9000 }] }),
    'working-leg',
    'none',
    /Your left foot can’t be seen/,
  ],
  ['seated before a squat', seated(), 'whole-body', 'none', /^Stand up/],
];

const seatedFaults: Fault[] = [
  ['turned right', seated({ camera: { yawDeg: 18 } }), 'square', 'turn-left', /left shoulder a little back/],
  [
    'turned left',
    seated({ camera: { yawDeg: -18 } }),
    'square',
    'turn-right',
    /right shoulder a little back/,
  ],
  ['no room to stand up', seated({ camera: { pitchDeg: -10 } }), 'whole-body', 'up', /^Once you stand/],
  [
    'the other foot in front',
    filmSeated({ side: 'right' }).track,
    'working-leg',
    'none',
    /Put your left foot/,
  ],
];

describe('checkPlacing(window, setup, facts)', () => {
  it.each(taskIds.flatMap((task) => sides.map((side) => [task, side] as const)))(
    'finds nothing in the way of a %s with the %s leg of somebody who stands well',
    (task, side) => {
      const placing = checkPlacing(filmStanding({ side, noisePx: 0.7 }).track, { task, side }, facts);
      expect(placing.checks.filter(({ state }) => state !== 'good')).toEqual([]);
      expect(placing).toMatchObject({ ready: true, first: null });
    },
  );

  it('finds nothing in the way of somebody who sits well, and does not say whether the camera is level', () => {
    const placing = checkPlacing(seated(), rise, facts);
    expect(placing).toMatchObject({ ready: true, first: null });
    expect(placing.checks.filter(({ state }) => state !== 'good').map(({ id }) => id)).toEqual([
      'camera-level',
    ]);
  });

  it.each(faults)('of somebody standing, %s, says what to move first', (_, track, id, arrow, says) => {
    const { first, ready } = checkPlacing(track, squat, facts);
    expect(ready).toBe(false);
    expect(first).toMatchObject({ id, arrow });
    expect(first!.sentence).toMatch(says);
  });

  it.each(seatedFaults)('of somebody seated, %s, says what to move first', (_, track, id, arrow, says) => {
    const { first, ready } = checkPlacing(track, rise, facts);
    expect(ready).toBe(false);
    expect(first).toMatchObject({ id, arrow });
    expect(first!.sentence).toMatch(says);
  });

  it("says left and right as the person's own, in large words, in the sentence and by the arrow alike", () => {
    const turned = (yawDeg: number) => checkPlacing(standing({ camera: { yawDeg } }), squat, facts).first;
    // A camera on the person's left: to face it, they turn to their left, and the left shoulder goes back.
    expect(turned(18)).toMatchObject({ short: 'Turn left', arrow: 'turn-left' });
    expect(turned(18)!.sentence).toBe('Turn your left shoulder a little back.');
    expect(turned(-18)).toMatchObject({ short: 'Turn right', arrow: 'turn-right' });
    expect(turned(-18)!.sentence).toBe('Turn your right shoulder a little back.');
  });

  it('sends a person seen in a mirror the other way', () => {
    const arrows: Partial<Record<PlacingArrow, PlacingArrow>> = {
      left: 'right',
      right: 'left',
      'turn-left': 'turn-right',
      'turn-right': 'turn-left',
      'tip-left': 'tip-right',
      'tip-right': 'tip-left',
    };
    for (const [what, track, id, arrow] of faults.filter(([, , , way]) => way in arrows)) {
      const { first } = checkPlacing(mirrorTrack(track), { ...squat, side: 'right' }, facts);
      expect([what, first?.id, first?.arrow]).toEqual([what, id, arrows[arrow]]);
    }
  });

  it.each([
    ['too dark', { mean: 0.1, contrast: 0.1 }, /too dark/],
    ['too bright', { mean: 0.95, contrast: 0.1 }, /too bright/],
    ['fogged', { mean: 0.5, contrast: 0.02 }, /washed out/],
  ])('says first of all that the picture is %s', (_, brightness, says) => {
    const { first } = checkPlacing(standing({ camera: { yawDeg: 18 } }), squat, { ...facts, brightness });
    expect(first).toMatchObject({ id: 'light', state: 'move' });
    expect(first!.sentence).toMatch(says);
  });

  it('does not know the light where it was not measured, and accepts that', () => {
    const { checks, ready } = checkPlacing(standing(), squat, { isFurniturePlaced: true });
    expect(checks[0]).toMatchObject({ id: 'light', state: 'unknown' });
    expect(ready).toBe(true);
  });

  it("prefers the camera's own rate to that of the joints", () => {
    const slow = standing({ rateHz: 10 });
    expect(checkPlacing(slow, squat, { ...facts, cameraRateHz: 30 }).ready).toBe(true);
    expect(checkPlacing(standing(), squat, { ...facts, cameraRateHz: 12 }).first?.id).toBe('frame-rate');
  });

  it('says nothing of a camera whose pictures have only just begun to come', () => {
    const rateAfter = (ms: number) =>
      checkPlacing(trackUpTo(standing(), ms), squat, { ...facts, cameraRateHz: 7 }).checks.find(
        ({ id }) => id === 'frame-rate',
      )!.state;
    expect([rateAfter(700), rateAfter(900)]).toEqual(['unknown', 'move']);
  });

  it('bears a camera that falters for a moment once it was fast enough', () => {
    const wasGood = new Set(['frame-rate'] as const);
    const rateAt = (cameraRateHz: number, before?: typeof wasGood) =>
      checkPlacing(standing(), squat, { ...facts, cameraRateHz }, before).first?.id;
    expect([rateAt(12), rateAt(12, wasGood), rateAt(9, wasGood)]).toEqual([
      'frame-rate',
      undefined,
      'frame-rate',
    ]);
    const lost = (fromMs: number) => standing({ dropped: [{ fromMs, untilMs: 1900 }] });
    const falters = (fromMs: number, before?: typeof wasGood) =>
      checkPlacing(lost(fromMs), squat, facts, before).first?.short;
    expect([falters(1200), falters(1200, wasGood), falters(800, wasGood)]).toEqual([
      'Close apps',
      undefined,
      'Close apps',
    ]);
  });

  it.each([
    ['split-stance-sit-to-stand', 'chair'],
    ['lateral-step-down', 'step'],
  ] as const)('asks before a %s whether the %s stands firm, and waits for the answer', (task, piece) => {
    const { first, ready } = checkPlacing(standing(), { task, side: 'left' }, {});
    expect(ready).toBe(false);
    expect(first).toMatchObject({ id: 'furniture', source: 'asked', state: 'unknown' });
    expect(first!.sentence).toContain(`the ${piece} stand`);
  });

  it('sees nobody in an empty room, and does not look for the light in it', () => {
    const { xPx, yPx, score, ...rest } = standing();
    const empty = { ...rest, xPx: xPx.map(() => 0), yPx: yPx.map(() => 0), score: score.map(() => 0) };
    expect(checkPlacing(empty, squat, facts).first).toMatchObject({ id: 'whole-body', state: 'unknown' });
    const none = {
      ...rest,
      timesMs: new Float64Array(),
      xPx: new Float32Array(),
      yPx: xPx.subarray(0, 0),
      score: xPx.subarray(0, 0),
    };
    expect(checkPlacing(none, squat, facts).ready).toBe(false);
  });

  it('says of somebody with their back to the camera to turn round', () => {
    const track = standing();
    // Seen from behind, the own left is left in the picture.
    const turned = { ...track, xPx: track.xPx.map((xPx) => track.widthPx - xPx) };
    expect(checkPlacing(turned, squat, facts).first).toMatchObject({ id: 'square', short: 'Turn round' });
  });

  it('rounds metres to halves, and uses the body height where it is known', () => {
    const far = standing({ camera: { distanceM: 5 } });
    expect(checkPlacing(far, squat, facts).first!.sentence).toBe(
      'Come closer by about two and a half metres.',
    );
    expect(checkPlacing(far, { ...squat, bodyHeightCm: 120 }, facts).first!.sentence).toMatch(
      /one and a half/,
    );
  });

  it('does not ask for straight toes where bends have shown how the body stands', () => {
    const bends = { yawDeg: 0, sdDeg: 2.5, footDeg: { left: 13, right: -13 } };
    const track = standing({ toeOutDeg: 20 });
    expect(checkPlacing(track, squat, facts).first?.id).toBe('square');
    expect(checkPlacing(track, { ...squat, bends }, facts).ready).toBe(true);
  });

  it('uses only the last two seconds', () => {
    const { timesMs, ...rest } = standing({ somebodyElse: [{ fromMs: 0, untilMs: 400 }] });
    expect(checkPlacing({ timesMs, ...rest }, squat, facts).ready).toBe(true);
  });

  it('speaks in whole sentences and in a few short words, kindly, each check in its place', () => {
    const films = [...faults, ...seatedFaults].map(([, track]) => track);
    for (const setup of [squat, rise]) {
      for (const track of films) {
        const { checks } = checkPlacing(track, setup, facts);
        const order = checks.map(({ id }) => placingCheckIds.indexOf(id));
        expect(order).toEqual(order.toSorted((a, b) => a - b));
        for (const { sentence, short, state, arrow } of checks) {
          expect(sentence).toMatch(/^[A-Z].*[.?]$/);
          expect(sentence).not.toMatch(unfit);
          expect(short.split(' ').length).toBeLessThanOrEqual(state === 'move' ? 2 : 3);
          if (state === 'move')
            expect(Math.max(...short.split(' ').map(wordsWidthEm))).toBeLessThan(widestWordEm);
          if (state !== 'move') expect(arrow).toBe('none');
        }
      }
    }
  });
});
