/** The questions before every session but the first, each with the signs that end the session; common practice, no source. */
export const newSigns = [
  { ask: 'swelling', signs: ['swollen', 'much-swollen'] },
  { ask: 'let-down', signs: ['gave-way', 'locked'] },
  { ask: 'else', signs: ['fell', 'hot-joint', 'calf', 'numbness'] },
] as const;
