import { framesCsv } from '#documents/csv/framesCsv';
import { repetitionsCsv } from '#documents/csv/repetitionsCsv';
import { exportRecording } from './exportRecording';
import type { Review } from './review';
import type { ReviewParts } from './reviewParts';

/** Hands the shown recording out as a file. */
export function exporting({
  adapters: { newId, now, saveFile },
  get,
  set,
}: Pick<ReviewParts, 'adapters' | 'get' | 'set'>): Pick<Review, 'saveRecording' | 'saveTable'> {
  return {
    saveRecording() {
      const { recording, keeping } = get();
      if (recording === null) return;
      const createdAt = now();
      const document = exportRecording(recording, get(), newId(), createdAt);
      saveFile(`overfoot-session-${dayOf(createdAt)}.json`, JSON.stringify(document));
      if (keeping.state === 'unsaved') set({ keeping: { state: 'not-kept' } });
    },
    saveTable(rows) {
      const { recording, limits } = get();
      if (recording === null) return;
      const text =
        rows === 'frames'
          ? framesCsv({ ...recording, track: recording.observed })
          : repetitionsCsv({ ...recording, limits });
      saveFile(`overfoot-${rows}-${dayOf(now())}.csv`, text);
    },
  };
}

/** For a file's name, which holds nothing else that could identify the patient. */
function dayOf(date: Date): string {
  return date.toISOString().slice(0, 10);
}
