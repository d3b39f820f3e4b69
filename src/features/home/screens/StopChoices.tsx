import { Button } from 'react-aria-components';
import type { StopPress } from '../guide/guideEvent';
import { useHome } from '../homeContext';

const reasons: readonly { press: StopPress; words: string }[] = [
  { press: 'stop-pain', words: 'Pain' },
  { press: 'stop-gave-way', words: 'The knee gave way' },
  { press: 'stop-locked', words: 'The knee locked or is stuck' },
  { press: 'stop-dizzy', words: 'Dizzy or unsteady' },
  { press: 'stop-other', words: 'Something else' },
];

/** Why somebody stopped: five large answers, each of which ends the session, and a way back. */
export function StopChoices() {
  const home = useHome();
  return (
    <section className="film-panel film-stops" role="alert">
      <h1>Stopped. What is it?</h1>
      {reasons.map(({ press, words }) => (
        <Button key={press} className="button film-reason" onPress={() => home.press(press)}>
          {words}
        </Button>
      ))}
      <Button className="button button-quiet" onPress={() => home.press('resume')}>
        Nothing, carry on
      </Button>
    </section>
  );
}
