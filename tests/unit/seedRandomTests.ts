import fc from 'fast-check';
import { inject } from 'vitest';
import type {} from './randomSeed';

/** How many cases each random test tries that does not say so itself; fast-check's own number where it is left out. */
const cases = process.env['OVERFOOT_TEST_CASES'];

fc.configureGlobal({
  ...fc.readConfigureGlobal(),
  seed: inject('randomSeed'),
  ...(cases === undefined ? {} : { numRuns: Number(cases) }),
});
