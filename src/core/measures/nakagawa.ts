import type { HealthyValues } from './measure';

/** Whom Nakagawa et al. 2012 measured in three dimensions: 80 people, half of them without knee pain. */
export const nakagawa: Omit<HealthyValues, 'mean' | 'sd'> = {
  people: 'people without knee pain in a single-leg squat',
  source: 'Nakagawa 2012, n = 80 with those in pain; by motion capture in three dimensions',
  tasks: ['single-leg-squat'],
};
