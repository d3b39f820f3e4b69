import { Button } from 'react-aria-components';
import { momentWords } from '#words/dateWords';
import { useHome, useHomeState } from '../homeContext';
import { setWords } from './setWords';

/** Sessions that the therapist has not been sent. */
export function Unsent() {
  const home = useHome();
  const unsent = useHomeState(({ today }) => today.unsent);
  if (unsent.length === 0) return null;
  return (
    <section className="card home-section" aria-labelledby="unsent-title">
      <h2 id="unsent-title">Not sent yet</h2>
      <ul className="unsent-list">
        {unsent.map(({ id, startedAt, sets, isBrokenOff, isAnswer }) => (
          <li key={id}>
            <span>
              {momentWords(startedAt)}, {isAnswer ? 'your answer' : setWords(sets)}
              {isBrokenOff && sets > 0 && ', broken off'}
            </span>
            <Button
              className="button"
              aria-label={`Send the ${isAnswer ? 'answer' : 'session'} of ${momentWords(startedAt)}`}
              onPress={() => void home.showSending(id)}
            >
              Send
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
