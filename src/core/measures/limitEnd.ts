export const limitEnds = ['least', 'most'] as const;
/** The two ends at which a measure can have a limit: the least and the most that is in line. */
export type LimitEnd = (typeof limitEnds)[number];
