import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Side } from '#core/protocol/side';
import type { Box } from './legBox';
import { personBox } from './personBox';

/**
 * The part of the picture that one leg needs through a whole recording.
 *
 * Frame:   picture px
 * @returns  the whole picture where the leg was never seen
 */
export function legPart(track: KeypointTrack, side: Side): Box {
  const isOfLeg = keypointNames.map((name) =>
    ['hip', 'knee', 'ankle', 'heel', 'foot_index'].some((joint) => name === `${side}_${joint}`),
  );
  const score = track.score.map((value, at) => (isOfLeg[at % keypointCount] ? value : 0));
  return personBox({ ...track, score });
}
