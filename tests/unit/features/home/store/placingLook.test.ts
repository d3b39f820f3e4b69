import { describe, expect, it } from 'vitest';
import { frameCount, frameRow } from '#core/keypoints/keypointTrack';
import type { GuideEvent } from '#features/home/guide/guideEvent';
import type { GuidePhase } from '#features/home/guide/guideState';
import { createHomeStore } from '#features/home/store/homeStore';
import { createPlacingLook } from '#features/home/store/placingLook';
import { filmStanding } from '../../../../support/filmStill';
import { smallItem } from '../../../../support/smallPlan';

const { track } = filmStanding({ side: 'left', noisePx: 0.7 });
const item = smallItem({ task: 'single-leg-squat', sides: ['left'] });
const step = {
  item,
  itemIndex: 0,
  side: 'left',
  number: 1,
  ofSets: 1,
  restSeconds: 0,
  change: 'first',
} as const;

/** What the guide is told of somebody who stands well, before a camera of so many pictures a second. */
function tell(phase: GuidePhase, seenFps: number): GuideEvent[] {
  const home = createHomeStore();
  home.enter('exercise', { isFurniturePlaced: true });
  const told: GuideEvent[] = [];
  const look = createPlacingLook({
    home,
    camera: {
      rates: () => ({ seenFps, trackedFps: seenFps }),
      brightness: () => ({ mean: 0.5, contrast: 0.2 }),
    },
    bends: { known: () => null },
    send: (event) => told.push(event),
  });
  look.enter(phase);
  const { widthPx, heightPx, timesMs } = track;
  for (let frame = 0; frame < frameCount(track); frame++) {
    const timeMs = 500 + timesMs[frame]!;
    look.push({ timeMs, row: frameRow(track, frame), widthPx, heightPx }, step);
  }
  return told.filter(({ kind }) => kind === 'placing');
}

describe('createPlacingLook(parts).push(frame, step)', () => {
  it('says of a busy device that it costs exactness alone, which sends nobody back from the quiet stand', () => {
    for (const phase of ['placing', 'standing'] as const) {
      expect(tell(phase, 5).at(-1)).toMatchObject({ isGood: false, cost: 'exactness' });
      expect(tell(phase, 30).at(-1)).toMatchObject({ isGood: true, cost: 'nothing' });
    }
  });
});
