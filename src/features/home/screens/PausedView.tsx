import { Button } from 'react-aria-components';
import type { PauseReason } from '../guide/guideState';
import type { GuideView } from '../guide/guideView';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { BigWords } from './BigWords';
import { PainStop } from './PainStop';
import { StopChoices } from './StopChoices';

const reasons: Record<Exclude<PauseReason, 'stop'>, string> = {
  'left-picture': 'You are out of the picture. Come back, and it continues by itself.',
  'no-pictures': 'The camera gives no pictures. Close other programs that use it. It continues by itself.',
  'not-followed': 'You are no longer followed. Stay where you are: in a moment it continues by itself.',
  turned:
    'The picture was turned. Turn it back, and it continues by itself. To continue like this, press Continue, and walk back to your place.',
  button: 'Take your time. Press Continue, and walk back to your place.',
  'page-hidden': 'You left this page. Press Continue when you are ready.',
  'camera-ended':
    'The camera has stopped. What you have done so far is saved. Switch the camera on again, then continue.',
};

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
      <BigWords text={reason === 'left-picture' ? 'Come back' : 'Paused'} />
      <p className="film-sentence">
        {reason === 'camera-ended' && camera.state === 'problem' ? camera.sentence : reasons[reason]}
      </p>
      {count !== null && count > 0 && (
        <p className="film-sentence">
          {count} of {ofCount} {isHold ? 'holds ' : ''}done.
        </p>
      )}
      {presses.includes('end') && (
        <Button className="button film-end" onPress={() => home.press('end')}>
          End for today
        </Button>
      )}
    </div>
  );
}
