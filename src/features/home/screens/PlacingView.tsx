import { setupLines } from '#documents/plan/setupLines';
import { message } from '#words/messages/message';
import type { GuideView } from '../guide/guideView';
import { useHomeState, useHomeStep } from '../homeContext';
import { arrowShown } from '../placing/arrowShown';
import { BigWords } from './BigWords';
import { DirectionArrow } from './DirectionArrow';
import { furnitureToAsk } from './furnitureToAsk';
import { isShownMirrored } from './isShownMirrored';

/** What to move and which way; before that the question that no camera can answer. */
export function PlacingView({ view: { step } }: { view: GuideView }) {
  const placing = useHomeStep('exercise', (part) => part.placing);
  const isTrying = useHomeState(({ pace }) => pace.state === 'checking');
  const question = useHomeStep('exercise', (part) => furnitureToAsk(step.item, part.isFurniturePlaced));
  const isMirrored = useHomeState(isShownMirrored);
  // Asked at once, before anybody has walked away from the device.
  if (question !== null) return <Prepare question={question} steps={setupLines(step.item, step.side)} />;
  if (placing === null) {
    return (
      <div className="film-told">
        <BigWords text={message(isTrying ? 'film.one-moment' : 'placing.step-in.short')} />
        <p className="visually-hidden">{message(isTrying ? 'film.walk' : 'placing.step-in')}</p>
      </div>
    );
  }
  const { first, ready } = placing;
  if (first === null) {
    return (
      <div className={ready ? 'film-told film-good' : 'film-told'}>
        <BigWords text={message(ready ? 'heard.good' : 'film.stay')} />
      </div>
    );
  }
  const arrow = arrowShown(first.arrow, isMirrored);
  return (
    <div className="film-told">
      {arrow !== 'none' && <DirectionArrow arrow={arrow} />}
      <BigWords text={first.short} />
      <span className="visually-hidden">{first.sentence}</span>
    </div>
  );
}

function Prepare({ question, steps }: { question: string; steps: readonly string[] }) {
  return (
    <section className="film-panel" aria-label={message('film.set-up')}>
      <h1>{message('camera.set-up')}</h1>
      <ol className="film-steps">
        {steps.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
      <p className="film-question">{question}</p>
    </section>
  );
}
