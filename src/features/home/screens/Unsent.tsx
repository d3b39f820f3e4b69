import { Button } from 'react-aria-components';
import { momentWords } from '#words/dateWords';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';

/** Sessions that the therapist has not been sent. */
export function Unsent() {
  const home = useHome();
  const unsent = useHomeState(({ today }) => today.unsent);
  if (unsent.length === 0) return null;
  return (
    <section className="card home-section" aria-labelledby="unsent-title">
      <h2 id="unsent-title">{message('today.unsent')}</h2>
      <ul className="unsent-list">
        {unsent.map(({ id, startedAt, sets, isBrokenOff, isAnswer }) => (
          <li key={id}>
            <span>
              {isAnswer
                ? message('today.unsent-answer', { moment: momentWords(startedAt) })
                : message('today.unsent-session', {
                    moment: momentWords(startedAt),
                    sets,
                    brokenOff: isBrokenOff && sets > 0 ? 'yes' : 'no',
                  })}
            </span>
            <Button
              className="button"
              aria-label={message(isAnswer ? 'today.send-answer' : 'today.send-session', {
                moment: momentWords(startedAt),
              })}
              onPress={() => void home.showSending(id)}
            >
              {message('today.send')}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
