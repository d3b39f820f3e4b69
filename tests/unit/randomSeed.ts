import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    randomSeed: number;
  }
}

/** The usual seed: the same cases every time, so that a failure can be looked into. */
const usualSeed = 20_260;

/**
 * Picks and prints the seed of all random tests: the usual one, a new one for OVERFOOT_TEST_SEED=random, or the one
 * that OVERFOOT_TEST_SEED names.
 */
export default function provideSeed(project: TestProject): void {
  const asked = process.env['OVERFOOT_TEST_SEED'] ?? '';
  const seed =
    asked === 'random' ? Math.floor(Math.random() * 2 ** 31) : asked === '' ? usualSeed : Number(asked);
  if (!Number.isInteger(seed))
    throw new Error(`OVERFOOT_TEST_SEED must be a whole number or "random", not "${asked}".`);
  process.stdout.write(`Random tests take seed ${seed}.\n`);
  project.provide('randomSeed', seed);
}
