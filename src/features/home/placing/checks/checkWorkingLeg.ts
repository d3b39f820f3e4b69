import type { KeypointName } from '#core/keypoints/keypointNames';
import { reasonCode } from '#core/measurement/curve';
import { missingAt } from '#core/measurement/smoothPoints';
import { otherSide, type Side } from '#core/protocol/side';
import { medianWhere } from '#core/view/frontalKneeAngle';
import { message } from '#words/messages/message';
import type { Sight } from '../sightOf';
import { good, move, notYet, type Check } from './placingFinding';

/** A joint has to be seen in this share of the window. */
const leastSeenShare = { tight: 0.85, loose: 0.75 };
/** In a split stance the working ankle stands lower in the picture than the other by this share of leg length. */
const leastLead = 0.03;

const joints = { hip: 'hip', knee: 'knee', ankle: 'ankle', heel: 'foot', foot_index: 'foot' } as const;
type Joint = keyof typeof joints;
/** Of the other leg less is needed; a foot that is lifted behind is often hidden. */
const needed: Record<'working' | 'other', readonly Joint[]> = {
  working: ['hip', 'knee', 'ankle', 'heel', 'foot_index'],
  other: ['hip', 'knee'],
};

const hiddenCode = reasonCode('joint-unseen');

/** Working leg and foot visible, the other leg too, and in a split stance the working foot in front. */
export const checkWorkingLeg: Check = (sight, wasGood) => {
  const { extent, setup, obstacle } = sight;
  if (extent === null) return notYet();
  const least = leastSeenShare[wasGood ? 'loose' : 'tight'];
  for (const side of [setup.side, otherSide(setup.side)]) {
    const hidden = needed[side === setup.side ? 'working' : 'other'].find(
      (joint) => seenShare(sight, `${side}_${joint}`) < least,
    );
    if (hidden !== undefined) {
      const joint = joints[hidden];
      return move(
        message('placing.hidden', { part: `${side}_${joint}` }),
        message('placing.hidden.short', { joint }),
      );
    }
  }
  if (obstacle === 'joint-unseen')
    return move(message('placing.leg-hidden', { side: setup.side }), message('placing.leg-hidden.short'));
  if (sight.task.workingFoot === 'nearer' && sight.posture === 'seated' && isBehind(sight)) {
    return move(message('placing.foot-ahead', { side: setup.side }), message('placing.foot-ahead.short'));
  }
  return good(message('placing.leg', { side: setup.side }), message('placing.leg.short'));
};

/** Points outside the picture are handled by the whole-body check. */
function seenShare({ points }: Sight, name: KeypointName): number {
  const point = points.point(name);
  const samples = points.timesMs.length;
  let unseen = 0;
  for (let i = 0; i < samples; i++) if (missingAt([point], i) === hiddenCode) unseen++;
  return 1 - unseen / Math.max(1, samples);
}

function isBehind({ extent, legPx, points, setup }: Sight): boolean {
  const height = (side: Side) => {
    const ankle = points.point(`${side}_ankle`);
    return medianWhere(
      Uint8Array.from(points.timesMs, (_, i) => (missingAt([ankle], i) === 0 ? 1 : 0)),
      (i) => ankle.yPx.values[i]!,
    );
  };
  const [working, other] = [height(setup.side), height(otherSide(setup.side))];
  if (extent === null || legPx === null || working === null || other === null) return false;
  return other - working > leastLead * legPx;
}
