import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReviewState } from '../reviewContext';
import { cueOf } from './cueOf';
import { CueShow } from './CueShow';
import { repetitionAt } from './repetitionAt';

interface Props {
  recording: ShownRecording;
  index: number;
}

/** Shows one repetition to the patient at once, with its cue from the list, or else the library's. */
export function ShowOne({ recording, index }: Props) {
  const cues = useReviewState((state) => state.entries.cues);
  const judgements = useReviewState((state) => state.judgements);
  const [isShowing, setShowing] = useState(false);
  const { measurement } = recording;
  const listed = cues.find(({ atMs }) => repetitionAt(measurement, atMs) === index);
  return (
    <>
      <Button className="button button-quiet no-print" onPress={() => setShowing(true)}>
        Show this one
      </Button>
      {isShowing && (
        <CueShow
          recording={recording}
          cues={[listed ?? cueOf(measurement, index, judgements[index]!)]}
          onClose={() => setShowing(false)}
        />
      )}
    </>
  );
}
