import type { MeasurementNote } from '#core/measurement/measurement';

/** Titles of notes on recordings with nothing, or next to nothing, measured; these are shown large. */
export const noteTitles: Partial<Record<MeasurementNote['kind'], string>> = {
  'no-person': 'Nobody was found in this video',
  'no-repetitions': 'No repetition was found',
  'not-facing': 'No angle can be given from this view',
  'view-turned': 'No angle can be given from this view',
};
