import { detectableChange95 } from '../statistics/detectableChange';
import type { Assessment } from './assessment';

/**
 * Standard error of measurement of one test as published, in the test's unit: its detectable change over 1.96 sqrt 2.
 *
 * Missing: null where no error is published; one that is our own choice is no published one
 */
export function publishedSem({ error }: Pick<Assessment, 'error'>): number | null {
  return error === null || !error.isPublished ? null : error.detectable / detectableChange95(1);
}
