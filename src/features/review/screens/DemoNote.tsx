import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReview } from '../reviewContext';

/** Says of invented data that it is invented; the rest is one press away. */
export function DemoNote({ recording }: { recording: ShownRecording }) {
  const review = useReview();
  const { origin, note, video } = recording;
  const isExample = origin === 'example';
  if (!isExample && note === '') return null;
  return (
    <DialogTrigger>
      <Button className="demo-note">{isExample ? 'Invented example' : 'Invented data'}</Button>
      <Popover className="popover" placement="bottom start">
        <Dialog aria-label="About this recording" className="popover-text demo-words">
          {isExample ? (
            <>
              <p>
                <strong>This is an example.</strong> The person is invented and rendered by a computer; nobody
                was filmed.
              </p>
              <Button className="button" isDisabled={video === null} onPress={() => void review.trackAgain()}>
                Track it again on this device
              </Button>
            </>
          ) : (
            <p>{note}</p>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
