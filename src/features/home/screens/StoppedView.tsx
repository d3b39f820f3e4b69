import { useHomeState, useHomeStep } from '../homeContext';
import { BigWords } from './BigWords';

/** After a stop: sit down, and what the plan says to do. */
export function StoppedView() {
  const caption = useHomeStep('exercise', (part) => part.caption);
  const isPain = useHomeState(({ sets }) => sets.at(-1)?.result.cutShort === 'pain');
  return (
    <div className="film-told">
      <BigWords text={isPain ? 'Sit down' : 'Stopped'} />
      <p className="film-sentence">{caption}</p>
    </div>
  );
}
