import { useEffect } from 'react';
import { Button, ToggleButton } from 'react-aria-components';
import { useReview, useReviewState } from '#features/review/reviewContext';
import { useNavigation, useNavigationState } from '#shell/navigation/navigationContext';
import { Message } from '#ui/components/Message';
import { SideChoice } from '#ui/components/SideChoice';
import { TaskChoice } from '#ui/components/TaskChoice';
import { sideHint } from '#words/exerciseWords';
import { useMirror, useMirrorState } from '../mirrorContext';
import { KneeBar } from './KneeBar';
import './mirror.css';
import { limitWords } from '#words/limitWords';
import { MirrorPicture } from './MirrorPicture';
import { MirrorTaken } from './MirrorTaken';
import { RecordButton } from './RecordButton';

/** A mirror for practice in the room: the leg over the live picture, and how far the knee is from its lane. */
export function MirrorScreen() {
  const review = useReview();
  const mirror = useMirror();
  const camera = useMirrorState((state) => state.camera);
  const hasTone = useMirrorState((state) => state.hasTone);
  const recording = useMirrorState((state) => state.recording);
  const { task, side } = useReviewState((state) => state.setup);
  const limits = useReviewState((state) => state.limits);
  const navigation = useNavigation();
  const from = useNavigationState((state) => state.from);
  const leg = side ?? 'right';

  useEffect(() => () => mirror.close(), [mirror]);
  useEffect(() => {
    mirror.watchLeg({ side: leg, limits });
  }, [mirror, leg, limits]);

  return (
    <main className="live-mirror always-dark">
      <header className="live-mirror-head">
        <h1>Live mirror</h1>
        <TaskChoice value={task} onChange={review.setTask} />
        <SideChoice value={leg} onChange={review.setSide} hint={sideHint(task)} error={null} />
        <ToggleButton className="button" isSelected={hasTone} onChange={(on) => mirror.setTone(on)}>
          {hasTone ? 'Tone is on' : 'Tone when the knee leaves its lane'}
        </ToggleButton>
        {camera.state === 'on' && <RecordButton />}
        <Button
          className="button"
          isDisabled={recording.state === 'running' || recording.state === 'done'}
          onPress={() => navigation.returnTo(from ?? 'start')}
        >
          Close the mirror
        </Button>
      </header>
      <MirrorTaken />
      {camera.state === 'on' ? (
        <div className={`live-mirror-stage ${camera.heightPx > camera.widthPx ? 'live-mirror-upright' : ''}`}>
          <MirrorPicture camera={camera} side={leg} limits={limits} />
          <KneeBar side={leg} limits={limits} isMirrored={camera.isMirrored} />
        </div>
      ) : (
        <div className="live-mirror-start">
          {camera.state === 'problem' && <Message kind="problem">{camera.sentence}</Message>}
          <p>
            Stand facing the camera squarely, the whole body in the picture. The angle is measured in the
            picture: from any other direction it means nothing. The lane is{' '}
            {limitWords('knee-angle', 'most', limits['knee-angle'].most)} and{' '}
            {limitWords('knee-angle', 'least', limits['knee-angle'].least)}. Nothing that the camera sees is
            kept, unless you record it.
          </p>
          <p>Stop if it hurts more than was agreed. Keep something to hold on to within reach.</p>
          <Button
            className="button button-primary"
            isDisabled={camera.state === 'opening'}
            onPress={() => void mirror.open({ side: leg, limits })}
          >
            {camera.state === 'opening' ? 'Opening the camera …' : 'Open the camera'}
          </Button>
        </div>
      )}
    </main>
  );
}
