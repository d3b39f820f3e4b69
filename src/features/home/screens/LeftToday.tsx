import { Button } from 'react-aria-components';
import { useHome, useHomeState } from '../homeContext';

/** The way on where a session of today was broken off. */
export function LeftToday({ isDisabled }: { isDisabled: boolean }) {
  const home = useHome();
  const left = useHomeState(({ today }) => today.left);
  const isKeeping = useHomeState(({ interrupted }) => interrupted.some(({ state }) => state === 'keeping'));
  if (left === null) return null;
  return (
    <section className="card home-section" aria-labelledby="left-title">
      <h2 id="left-title">You stopped in the middle today</h2>
      <p>
        {left.done} of {left.of} sets done. You can do the rest now.
      </p>
      <Button
        className="button"
        isDisabled={isDisabled || isKeeping}
        onPress={() => void home.continueToday()}
      >
        {isKeeping ? 'Saving …' : 'Do the rest'}
      </Button>
    </section>
  );
}
