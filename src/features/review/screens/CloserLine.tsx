import { Button, Label, ProgressBar } from 'react-aria-components';
import { useTrackingState } from '#shell/tracking/trackingContext';
import { Message } from '#ui/components/Message';
import { ProgressFill } from '#ui/components/ProgressFill';
import { useReview } from '../reviewContext';

/** How far the closer look has come, while one is under way. */
export function CloserLine() {
  const review = useReview();
  const closer = useTrackingState((state) => state.closer);
  if (closer === null) return null;
  const { framesDone, framesExpected } = closer;
  return (
    <Message
      kind="plain"
      actions={
        <Button className="button no-print" onPress={review.stopCloserLook}>
          Stop here
        </Button>
      }
    >
      <ProgressBar
        value={framesDone}
        maxValue={Math.max(1, framesExpected)}
        isIndeterminate={framesExpected === 0}
      >
        {({ percentage }) => (
          <>
            <Label>Looking at each repetition again, more closely. Angles may still change a little.</Label>
            <ProgressFill percentage={percentage} />
          </>
        )}
      </ProgressBar>
    </Message>
  );
}
