import { recordingHead } from '#documents/recording/recordingHead';
import { explainProblem } from '#shell/explainProblem';
import { exportRecording } from './exportRecording';
import type { Review } from './review';
import type { ReviewParts } from './reviewParts';

/** Keeps what was filmed or opened in the clinic under a patient; from then on every change of it is saved. */
export function keepingFor({
  adapters,
  get,
  set,
  keeper,
  closerLook,
}: ReviewParts): Pick<Review, 'keepFor' | 'knownPseudonyms'> {
  return {
    knownPseudonyms: () => adapters.patients.pseudonyms().catch(() => []),
    async keepFor(pseudonym, day) {
      const before = get();
      if (before.recording === null || before.keeping.state === 'saving') return;
      set({ keeping: { state: 'saving' }, keptFor: pseudonym, problem: null });
      // What the closer look still finds is kept as well.
      await closerLook.current;
      const now = get();
      const isSame =
        now.keeping.state !== 'kept' && now.recording?.observed.timesMs === before.recording.observed.timesMs;
      const { recording, ...state } = isSame ? now : before;
      const document = exportRecording(recording!, state, adapters.newId(), new Date(`${day}T12:00:00`));
      try {
        const kept = await adapters.patients.keep(document, recording!.video, pseudonym);
        if (isSame) keeper.begin(kept, recordingHead(document));
      } catch (error) {
        const { sentence } = explainProblem(error, 'keep');
        set({
          keeping: { state: 'measured' },
          keptFor: null,
          problem: { title: 'It is not kept', sentence },
        });
      }
    },
  };
}
