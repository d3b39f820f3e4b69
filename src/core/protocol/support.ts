/** How much is held on to, from least to most. */
export const supports = ['none', 'fingertip', 'hand'] as const;
export type Support = (typeof supports)[number];
