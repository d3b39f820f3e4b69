import type { MeasuredRepetition } from '#core/measurement/measurement';

/** What a repetition lacks, short for a table and as a sentence; null for a complete one. */
export const completenessWords: Record<
  MeasuredRepetition['completeness'],
  { short: string; sentence: string } | null
> = {
  complete: null,
  partial: { short: 'not all the way', sentence: 'This repetition did not go as far as the others.' },
  'cut-at-start': { short: 'begun before', sentence: 'This repetition had begun before the video did.' },
  'cut-at-end': { short: 'not ended', sentence: 'The video ends before this repetition does.' },
};
