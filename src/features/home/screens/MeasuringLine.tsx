import { Button, Label, ProgressBar } from 'react-aria-components';
import { ProgressFill } from '#ui/components/ProgressFill';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';
import { measuredShare, toldSets } from '../store/telling';

/** Progress of the careful measuring that the result waits for, and the way not to wait. */
export function MeasuringLine() {
  const home = useHome();
  const share = useHomeState((state) => measuredShare(toldSets(state), state.background));
  const isPaused = useHomeState(({ background }) => background.isPaused);
  const isFinishing = useHomeState((state) => toldSets(state).some(({ keeping }) => keeping === 'finishing'));
  const place = useHomeState(({ plan }) => (plan === null ? 'kept' : 'today'));
  return (
    <div className="home-section">
      <ProgressBar className="background-line" value={share} maxValue={1}>
        {({ percentage }) => (
          <>
            <Label>
              {message('summary.measuring', { state: isPaused ? 'waiting' : 'measuring', place })}
            </Label>
            <ProgressFill percentage={percentage} />
          </>
        )}
      </ProgressBar>
      <Button className="button" isDisabled={isFinishing} onPress={() => home.showFirstNumbers()}>
        {message('summary.first-result')}
      </Button>
    </div>
  );
}
