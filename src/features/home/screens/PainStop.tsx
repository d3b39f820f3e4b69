import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import { useHome } from '../homeContext';
import type { PainWarning } from '../store/homeState';

/** Too much pain in the set that was done: stopping comes first. */
export function PainStop({ warning: { advice, words, mayGoOn } }: { warning: PainWarning }) {
  const home = useHome();
  return (
    <section className="film-panel" role="alert">
      <h1>{message('pain.stop-here')}</h1>
      <p>{advice}</p>
      <p>{words}</p>
      <Button className="button button-primary" onPress={() => home.press('stop-pain')}>
        {message('pain.stop')}
      </Button>
      {mayGoOn && (
        <Button className="button" onPress={() => home.goOnInSpiteOfPain()}>
          {message('pain.go-on')}
        </Button>
      )}
    </section>
  );
}
