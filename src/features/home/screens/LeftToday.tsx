import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';

/** The way on where a session of today was broken off. */
export function LeftToday({ isDisabled }: { isDisabled: boolean }) {
  const home = useHome();
  const left = useHomeState(({ today }) => today.left);
  const isKeeping = useHomeState(({ interrupted }) => interrupted.some(({ state }) => state === 'keeping'));
  if (left === null) return null;
  return (
    <section className="card home-section" aria-labelledby="left-title">
      <h2 id="left-title">{message('today.left')}</h2>
      <p>{message('today.left.what', left)}</p>
      <Button
        className="button"
        isDisabled={isDisabled || isKeeping}
        onPress={() => void home.continueToday()}
      >
        {message(isKeeping ? 'interrupted.keeping' : 'today.left.do')}
      </Button>
    </section>
  );
}
