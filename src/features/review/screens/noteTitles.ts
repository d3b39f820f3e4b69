import type { MeasurementNote } from '#core/measurement/measurement';

/** Heads of the notes that leave nothing, or next to nothing, measured; these are told large. */
export const noteTitles: Partial<Record<MeasurementNote['kind'], string>> = {
  'no-person': 'Nobody was found in this video',
  'no-repetitions': 'No repetition was found',
  'view-turned': 'No angle can be given from this view',
};
