import { Button } from 'react-aria-components';
import { useHome } from '../homeContext';

/** Too much pain in the set that was done: stopping comes first. */
export function PainStop({ advice }: { advice: string }) {
  const home = useHome();
  return (
    <section className="film-panel" role="alert">
      <h1>Stop here for today</h1>
      <p>{advice}</p>
      <Button className="button button-primary" onPress={() => home.press('stop-pain')}>
        Stop for today
      </Button>
      <Button className="button" onPress={() => home.goOnInSpiteOfPain()}>
        My therapist told me to continue
      </Button>
    </section>
  );
}
