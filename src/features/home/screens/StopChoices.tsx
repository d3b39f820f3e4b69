import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import type { StopPress } from '../guide/guideEvent';
import { useHome } from '../homeContext';

const presses = [
  'stop-pain',
  'stop-gave-way',
  'stop-locked',
  'stop-dizzy',
  'stop-other',
] as const satisfies readonly StopPress[];

/** Why somebody stopped: five large answers, each of which ends the session, and a way back. */
export function StopChoices() {
  const home = useHome();
  return (
    <section className="film-panel film-stops" role="alert">
      <h1>{message('film.stopped-why')}</h1>
      {presses.map((press) => (
        <Button key={press} className="button film-reason" onPress={() => home.press(press)}>
          {message(`film.${press}`)}
        </Button>
      ))}
      <Button className="button button-quiet" onPress={() => home.press('resume')}>
        {message('film.carry-on')}
      </Button>
    </section>
  );
}
