import { memo } from 'react';
import { Button } from 'react-aria-components';
import { otherSide } from '#core/protocol/side';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { Message } from '#ui/components/Message';
import { noteSentence } from '#words/noteSentence';
import { useReview } from '../reviewContext';
import { CloserLine } from './CloserLine';
import { noteTitles } from './noteTitles';

/** What to know before trusting the numbers. */
export const RecordingNotes = memo(function RecordingNotes({ recording }: { recording: ShownRecording }) {
  const review = useReview();
  const { shortfall, measurement } = recording;
  return (
    <>
      <CloserLine />
      {shortfall !== null && <Message kind="caution">{shortfall}</Message>}
      {measurement.notes.map((entry) => (
        <Message
          key={entry.kind}
          kind="caution"
          title={noteTitles[entry.kind]}
          isLarge={noteTitles[entry.kind] !== undefined}
          actions={
            entry.kind === 'side-doubtful' && (
              <Button className="button no-print" onPress={() => review.setSide(otherSide(entry.side))}>
                Switch to the {otherSide(entry.side)} leg
              </Button>
            )
          }
        >
          {noteSentence(entry)}
        </Message>
      ))}
    </>
  );
});
