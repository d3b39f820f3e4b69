import { message } from '#words/messages/message';
import { useHomeState, useHomeStep } from '../homeContext';
import { BigWords } from './BigWords';

/** After a stop: sit down, and what the plan says to do. */
export function StoppedView() {
  const caption = useHomeStep('exercise', (part) => part.caption);
  const isOfBody = useHomeState(
    ({ endedBecause }) => endedBecause !== null && endedBecause.reason !== 'other',
  );
  return (
    <div className="film-told">
      <BigWords text={message(isOfBody ? 'film.sit-down' : 'film.stopped')} />
      <p className="film-sentence">{caption}</p>
    </div>
  );
}
