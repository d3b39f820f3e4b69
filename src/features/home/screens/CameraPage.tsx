import { useRef } from 'react';
import { Button } from 'react-aria-components';
import { findPreparation } from '#core/exercises/findPreparation';
import { Message } from '#ui/components/Message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { CameraAgain } from './CameraAgain';
import { CameraPicker } from './CameraPicker';
import { furnitureToAsk } from './furnitureToAsk';
import { HomePage } from './HomePage';
import { MirrorStage } from './MirrorStage';
import { OwnRecording } from './OwnRecording';
import { OwnVideosPage } from './OwnVideosPage';
import { RoomNotice } from './RoomNotice';
import { SoundChoices } from './SoundChoices';
import { VerdictLegend } from './VerdictLegend';

const lightAndSound = 'Have the light behind the camera, and turn the sound up.';

/** Why a camera is needed, which one, and the way out where there is none; then what it sees, before it begins. */
export function CameraPage() {
  const home = useHome();
  const camera = useHomeState((state) => state.camera);
  const hasVideos = useHomeState(({ sets }) => sets.length > 0);
  const isAgain = useHomeStep('camera', (part) => part.isAgain);
  const isLooking = useHomeStep('camera', (part) => part.isLooking);
  if (hasVideos) return <OwnVideosPage />;
  if (isAgain && (isLooking || camera.state === 'asking' || camera.state === 'on')) return <CameraAgain />;
  return camera.state === 'on' ? <CameraRuns /> : <CameraAsked onBack={() => home.back()} />;
}

function CameraAsked({ onBack }: { onBack: () => void }) {
  const home = useHome();
  const camera = useHomeState((state) => state.camera);
  const wish = useRef<Parameters<typeof home.openCamera>[0]>(undefined);
  const isAsking = camera.state === 'asking';
  return (
    <HomePage
      title="Set up the camera"
      leave={{ words: 'Back', onPress: onBack }}
      actions={
        <>
          <Button
            className="button button-primary"
            isDisabled={isAsking}
            onPress={() => void home.openCamera(wish.current)}
          >
            {isAsking
              ? 'Waiting for the camera …'
              : camera.state === 'problem'
                ? 'Try again'
                : 'Switch the camera on'}
          </Button>
          {camera.state === 'problem' && <OwnRecording words="Open a recorded video" />}
        </>
      }
    >
      {camera.state === 'problem' && (
        <Message kind="problem" title="No camera yet">
          {camera.sentence}
        </Message>
      )}
      <RoomNotice />
      <p>
        The camera counts along and records each set. The pictures stay on this device, and no sound is
        recorded.
      </p>
      <p>Your browser will ask whether this page may use the camera.</p>
      <CameraPicker onChoose={(next) => (wish.current = next)} />
    </HomePage>
  );
}

function CameraRuns() {
  const home = useHome();
  const camera = useHomeState((state) => state.camera);
  const first = useHomeState(({ steps }) => steps[0]);
  const preparation = first === undefined ? null : findPreparation(first.item.task, first.side);
  // The question whether the chair stands firm comes with these steps.
  const isAskedAfter = first !== undefined && furnitureToAsk(first.item, false) !== null;
  if (camera.state !== 'on') return null;
  return (
    <HomePage
      title="This is what the camera sees"
      leave={{ words: 'Back', onPress: () => home.back() }}
      actions={
        <Button className="button button-primary" onPress={() => home.startExercise()}>
          Begin
        </Button>
      }
    >
      <RoomNotice />
      <div className="camera-look">
        <MirrorStage />
      </div>
      <CameraPicker onChoose={(wish) => void home.openCamera(wish)} />
      {preparation !== null && (
        <section className="home-section">
          <h2>Set it up like this</h2>
          <ol className="home-list home-numbered">
            {[preparation.camera, ...(isAskedAfter ? [] : preparation.steps), lightAndSound].map(
              (sentence) => sentence !== null && <li key={sentence}>{sentence}</li>,
            )}
          </ol>
        </section>
      )}
      {first !== undefined && <VerdictLegend item={first.item} />}
      <details className="home-sound">
        <summary>Sound</summary>
        <SoundChoices />
      </details>
    </HomePage>
  );
}
