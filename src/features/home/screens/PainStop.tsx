import { Button } from 'react-aria-components';
import { useHome } from '../homeContext';
import type { PainWarning } from '../store/homeState';

/** Too much pain in the set that was done: stopping comes first. */
export function PainStop({ warning: { advice, words, mayGoOn } }: { warning: PainWarning }) {
  const home = useHome();
  return (
    <section className="film-panel" role="alert">
      <h1>Stop here for today</h1>
      <p>{advice}</p>
      <p>{words}</p>
      <Button className="button button-primary" onPress={() => home.press('stop-pain')}>
        Stop for today
      </Button>
      {mayGoOn && (
        <Button className="button" onPress={() => home.goOnInSpiteOfPain()}>
          My therapist told me to go on at this pain
        </Button>
      )}
    </section>
  );
}
