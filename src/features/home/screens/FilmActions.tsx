import { Button } from 'react-aria-components';
import type { GuidePress } from '../guide/guideEvent';
import type { GuideView } from '../guide/guideView';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { furnitureToAsk } from './furnitureToAsk';

const words: Record<GuidePress, string> = {
  pause: 'Pause',
  resume: 'Continue',
  'start-anyway': 'Start anyway',
  'skip-rest': 'Skip the rest',
  'end-set': 'End this set',
  'stop-pain': 'Stop: pain',
  end: 'End for today',
};

/** The most likely press comes first. */
const mainOrder: readonly GuidePress[] = ['resume', 'skip-rest', 'pause'];
const sideOrder: readonly GuidePress[] = ['start-anyway', 'end-set', 'pause', 'end'];

/** One large button, a second next to it, and always the stop for pain, each in the same place in every phase. */
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
          Continue
        </Button>
      </div>
    );
  }
  const isUncounted = phase === 'working' && count === null;
  const order: readonly GuidePress[] = isUncounted ? ['end-set', ...mainOrder] : mainOrder;
  const needsCamera = phase === 'paused' && pauseReason === 'camera-ended' && !hasCamera;
  const main = needsCamera || isAsked ? undefined : order.find((press) => presses.includes(press));
  const sides = isAsked ? sideOrder.slice(1) : sideOrder;
  const side = sides.find((press) => press !== main && presses.includes(press));
  const button = (press: GuidePress, className: string) => (
    <Button className={`button ${className}`} onPress={() => home.press(press)}>
      {press === 'stop-pain' && <StopSign />}
      {words[press]}
    </Button>
  );
  return (
    <div className="film-actions">
      {needsCamera && (
        <Button className="button button-primary film-main" onPress={() => void home.openCamera()}>
          Switch the camera on
        </Button>
      )}
      {isAsked && (
        <Button className="button button-primary film-main" onPress={() => home.setFurniturePlaced(true)}>
          Yes, it stands firm
        </Button>
      )}
      {main !== undefined && button(main, 'button-primary film-main')}
      {side !== undefined && button(side, 'film-side')}
      {presses.includes('stop-pain') && button('stop-pain', 'film-stop')}
    </div>
  );
}

function StopSign() {
  return (
    <svg className="icon" viewBox="0 0 20 20" aria-hidden="true">
      <path d="M6 1h8l5 5v8l-5 5H6l-5-5V6z" />
    </svg>
  );
}
