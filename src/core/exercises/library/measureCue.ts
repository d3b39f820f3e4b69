import type { LimitEnd } from '../../protocol/limits';
import type { MeasureId } from '../../measures/measures';
import { kneeInward, kneeOutward, pelvisDrops, trunkLeans } from './kneeFaults';

const overFoot = { most: kneeInward.cue, least: kneeOutward.cue };
const hipOverKnee = 'Sit back, hip over knee.';

const cues: Record<MeasureId, Record<LimitEnd, string>> = {
  'knee-off-line': overFoot,
  'knee-over-foot': overFoot,
  'hip-over-knee': { most: hipOverKnee, least: hipOverKnee },
  'pelvic-drop': { most: pelvisDrops.cue, least: 'Belt level.' },
  'trunk-lean': { most: trunkLeans.cue, least: trunkLeans.cue },
  'pelvis-place': { most: 'Hips between the feet.', least: 'Hips over the working foot.' },
  depth: { most: 'Not quite so low.', least: 'A little lower, as long as nothing hurts.' },
};

/** What to say when a measure beside the knee angle leaves its limit: what to do, in few words. Common practice, no source. */
export function measureCue(measure: MeasureId, end: LimitEnd): string {
  return cues[measure][end];
}
