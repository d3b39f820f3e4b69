import { defineConfig } from 'vitest/config';
import { pageSettings } from './src/tools/build/pageSettings.ts';

/**
 * The tests that `npm run -s mutants` repeats for every change it makes: those of the folders that it changes, without the
 * films that are measured as a whole, which take longest and pin down least. OVERFOOT_MUTANT_TESTS names fewer, so that a
 * slow machine is done sooner.
 */
const tests = process.env['OVERFOOT_MUTANT_TESTS'] ?? '{geometry,view,segmentation,scoring}/**/*.test.ts';

export default defineConfig({
  ...pageSettings,
  test: {
    root: import.meta.dirname,
    include: [`tests/unit/core/${tests}`],
    exclude: ['**/segmentation/eventTimes.test.ts'],
    globalSetup: 'tests/unit/randomSeed.ts',
    setupFiles: 'tests/unit/seedRandomTests.ts',
    env: { OVERFOOT_TEST_CASES: '25' },
    isolate: false, // As in vite.config.ts.
    testTimeout: 60_000,
  },
});
