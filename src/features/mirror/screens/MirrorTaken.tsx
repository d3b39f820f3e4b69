import { Button } from 'react-aria-components';
import { useReview } from '#features/review/reviewContext';
import { useNavigation } from '#shell/navigation/navigationContext';
import { Message } from '#ui/components/Message';
import { formatTime } from '#words/formatTime';
import { megabytes } from '#words/megabytes';
import { useMirror, useMirrorState } from '../mirrorContext';

/** What was recorded in the mirror, and what can be done with it. */
export function MirrorTaken() {
  const review = useReview();
  const navigation = useNavigation();
  const mirror = useMirror();
  const recording = useMirrorState((state) => state.recording);
  if (recording.state === 'failed') return <Message kind="problem">{recording.sentence}</Message>;
  if (recording.state !== 'done') return null;
  const { file, lastedMs, problem } = recording;
  const measure = async () => {
    await navigation.show('start', true);
    await review.openFile(file);
    // One that could not be opened can still be saved here.
    if (review.store.getState().chosen !== null) mirror.dropRecording();
  };
  return (
    <Message
      kind="caution"
      title={`Recorded: ${formatTime(lastedMs)}, ${megabytes(file.size)}`}
      actions={
        <div className="button-row">
          <Button className="button button-primary" onPress={() => void measure()}>
            Measure recording
          </Button>
          <Button className="button" onPress={mirror.saveRecording}>
            Save as a file
          </Button>
          <Button className="button button-quiet" onPress={mirror.dropRecording}>
            Delete it
          </Button>
        </div>
      }
    >
      {problem !== null && `${problem} `}It is only in this page’s memory, and will be lost when the page is
      closed.
    </Message>
  );
}
