import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import type { GuideView } from '../guide/guideView';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { furnitureAnswer } from './furnitureAnswer';
import { furnitureToAsk } from './furnitureToAsk';
import type { Offered } from './offered';
import { StopSign } from './StopSign';

/** The most likely press comes first. */
const mainOrder: readonly Offered[] = ['resume', 'pause'];
const sideOrder: readonly Offered[] = ['start-anyway', 'end-set', 'skip-rest', 'pause', 'end'];

/** One large button, a second next to it, and always a large one to stop, each in the same place in every phase. */
export function FilmActions({ view }: { view: GuideView }) {
  const { presses, phase, count, pauseReason, step } = view;
  const home = useHome();
  const hasCamera = useHomeState(({ camera }) => camera.state === 'on' || camera.state === 'asking');
  const isAsked = useHomeStep(
    'exercise',
    ({ isFurniturePlaced }) => phase === 'placing' && furnitureToAsk(step.item, isFurniturePlaced) !== null,
  );
  if (phase === 'all-done' || phase === 'stopped') {
    return (
      <div className="film-actions">
        <Button className="button button-primary film-main" onPress={() => home.finishExercise()}>
          {message(phase === 'stopped' ? 'film.questions' : 'film.how-it-was')}
        </Button>
      </div>
    );
  }
  const isUncounted = phase === 'working' && count === null;
  const order: readonly Offered[] = isUncounted ? ['end-set', ...mainOrder] : mainOrder;
  const needsCamera = phase === 'paused' && pauseReason === 'camera-ended' && !hasCamera;
  const main = needsCamera || isAsked ? undefined : order.find((press) => presses.includes(press));
  const sides = isAsked ? sideOrder.slice(1) : sideOrder;
  const side = sides.find((press) => press !== main && presses.includes(press));
  const button = (press: Offered, className: string) => (
    <Button className={`button ${className}`} onPress={() => home.press(press)}>
      {press === 'stop' && <StopSign />}
      {message(`press.${press}`)}
    </Button>
  );
  return (
    <div className="film-actions">
      {needsCamera && (
        <Button className="button button-primary film-main" onPress={() => void home.openCamera()}>
          {message('camera.switch-on')}
        </Button>
      )}
      {isAsked && (
        <Button className="button button-primary film-main" onPress={() => home.setFurniturePlaced(true)}>
          {furnitureAnswer(step.item)}
        </Button>
      )}
      {main !== undefined && button(main, 'button-primary film-main')}
      {side !== undefined && button(side, 'film-side')}
      {presses.includes('stop') && button('stop', 'film-stop')}
    </div>
  );
}
