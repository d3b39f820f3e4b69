import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import type { GuideView } from '../guide/guideView';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { BigWords } from './BigWords';
import { PainStop } from './PainStop';
import { StopChoices } from './StopChoices';

/** Shows that it is paused, why, and what to do. */
export function PausedView({ view: { pauseReason, count, ofCount, step, presses } }: { view: GuideView }) {
  const home = useHome();
  const warning = useHomeStep('exercise', (part) => part.painWarning);
  const camera = useHomeState((state) => state.camera);
  const reason = pauseReason ?? 'button';
  if (reason === 'stop') return <StopChoices />;
  if (warning !== null) return <PainStop warning={warning} />;
  const isHold = step.item.kind === 'hold';
  return (
    <div className={`film-told film-paused ${reason === 'left-picture' ? '' : 'film-near'}`}>
      <BigWords text={message(reason === 'left-picture' ? 'film.come-back' : 'film.paused')} />
      <p className="film-sentence">
        {reason === 'camera-ended' && camera.state === 'problem'
          ? camera.sentence
          : message(`film.paused.${reason}`)}
      </p>
      {count !== null && count > 0 && (
        <p className="film-sentence">
          {message(isHold ? 'film.holds-done' : 'film.repetitions-done', { count, of: ofCount })}
        </p>
      )}
      {presses.includes('end') && (
        <Button className="button film-end" onPress={() => home.press('end')}>
          {message('press.end')}
        </Button>
      )}
    </div>
  );
}
