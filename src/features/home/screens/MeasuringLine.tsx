import { Button, Label, ProgressBar } from 'react-aria-components';
import { ProgressFill } from '#ui/components/ProgressFill';
import { useHome, useHomeState } from '../homeContext';
import { measuredShare, toldSets } from '../store/telling';

/** Progress of the careful measuring that the result waits for, and the way not to wait. */
export function MeasuringLine() {
  const home = useHome();
  const share = useHomeState((state) => measuredShare(toldSets(state), state.background));
  const isPaused = useHomeState(({ background }) => background.isPaused);
  const isFinishing = useHomeState((state) => toldSets(state).some(({ keeping }) => keeping === 'finishing'));
  const place = useHomeState(({ plan }) => (plan === null ? 'in your kept sessions' : 'on Today'));
  return (
    <div className="home-section">
      <ProgressBar className="background-line" value={share} maxValue={1}>
        {({ percentage }) => (
          <>
            <Label>
              {isPaused ? 'Your video waits to be measured.' : 'Your video is being measured carefully.'} You
              can leave: the result is then {place}.
            </Label>
            <ProgressFill percentage={percentage} />
          </>
        )}
      </ProgressBar>
      <Button className="button" isDisabled={isFinishing} onPress={() => home.showFirstNumbers()}>
        Don’t wait: show the first result
      </Button>
    </div>
  );
}
