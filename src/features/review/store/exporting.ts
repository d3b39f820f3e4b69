import { mirrorTrack } from '#core/correction/mirrorTrack';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { framesCsv } from '#documents/csv/framesCsv';
import { repetitionsCsv } from '#documents/csv/repetitionsCsv';
import type { ShownRecording } from '#shell/tracking/shownRecording';
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
      if (keeping.state === 'unsaved' || keeping.state === 'measured')
        set({ keeping: { state: 'not-kept' } });
    },
    saveTable(rows) {
      const { recording, limits, sureness, session, keptFor, filmedOn } = get();
      if (recording === null) return;
      const origin = {
        patient: session?.patient ?? keptFor,
        date: filmedOn === '' ? null : filmedOn,
        sessionId: session?.id ?? null,
        set: session?.line.number ?? null,
      };
      const text =
        rows === 'frames'
          ? framesCsv({ ...recording, track: asFilmed(recording) })
          : repetitionsCsv([{ ...recording, limits, sureness, origin }]);
      saveFile(`overfoot-${rows}-${dayOf(now())}.csv`, text);
    },
  };
}

/** The joints as they were seen, with the person's own sides. */
function asFilmed({ observed, isMirrored }: ShownRecording): KeypointTrack {
  return isMirrored ? mirrorTrack(observed) : observed;
}

/** For a file's name, which holds nothing else that could identify the patient. */
function dayOf(date: Date): string {
  return date.toISOString().slice(0, 10);
}
