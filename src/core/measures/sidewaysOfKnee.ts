/** Words of the measures that follow the knee to the side: inward is positive. */
export const sidewaysOfKnee = {
  ways: { least: { short: 'out', long: 'outward' }, most: { short: 'in', long: 'inward' } },
} as const;
