import { tellingMeasure } from '#core/scoring/deciding';
import { judgeAll, measuredAgain } from '#shell/tracking/shownRecording';
import { correctionsOf } from './reviewEdits';
import type { ReviewParts, Showing } from './reviewParts';
import { sameRepetition } from './sameRepetition';
import { tellingRepetition } from './tellingRepetition';

/** Showing a recording in the review, judged by the limits in force. */
export function showing({
  adapters: { navigation },
  get,
  set,
}: Pick<ReviewParts, 'adapters' | 'get' | 'set'>): Showing {
  const show: Showing['show'] = (recording, part) => {
    const limits = part.limits ?? get().limits;
    const judgements = judgeAll(recording.measurement, limits, get().sureness);
    const telling = tellingRepetition(judgements, limits, recording.excluded);
    const isNew = part.edits !== undefined;
    set({
      recording,
      setup: recording.measurement.setup,
      judgements,
      changedVerdicts: null,
      selected: telling,
      ...(isNew && {
        measure: telling === null ? 'knee-angle' : tellingMeasure(judgements[telling]!).measure,
      }),
      ...part,
    });
    void navigation.show('review', true);
  };

  const replace: Showing['replace'] = (again) => {
    const { recording, selected } = get();
    if (recording === null || navigation.screen() !== 'review') return;
    const selectedAgain = sameRepetition(recording.measurement, again.measurement, selected);
    show(again, selectedAgain === null ? {} : { selected: selectedAgain });
  };

  return {
    show,
    replace,
    measureAgain(setup) {
      const { recording, edits } = get();
      if (recording === null) return;
      replace(measuredAgain(recording, setup ?? recording.setup, correctionsOf(edits)));
    },
  };
}
