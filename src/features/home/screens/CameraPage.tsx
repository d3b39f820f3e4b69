import { useRef } from 'react';
import { Button } from 'react-aria-components';
import { setupLines } from '#documents/plan/setupLines';
import { Message } from '#ui/components/Message';
import { cameraPlace } from '#words/exerciseWords';
import { message } from '#words/messages/message';
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
import { SteppedNotice } from './SteppedNotice';
import { VerdictLegend } from './VerdictLegend';

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
      title={message('camera.title')}
      back={onBack}
      actions={
        <>
          <Button
            className="button button-primary"
            isDisabled={isAsking}
            onPress={() => void home.openCamera(wish.current)}
          >
            {isAsking
              ? message('camera.waiting')
              : message(camera.state === 'problem' ? 'home.try-again' : 'camera.switch-on')}
          </Button>
          {camera.state === 'problem' && <OwnRecording words={message('camera.open-video')} />}
        </>
      }
    >
      {camera.state === 'problem' && (
        <Message kind="problem" title={message('camera.none-yet')}>
          {camera.sentence}
        </Message>
      )}
      <RoomNotice />
      <SteppedNotice />
      <p>{message('camera.why')}</p>
      <p>{message('camera.browser-asks')}</p>
      <CameraPicker onChoose={(next) => (wish.current = next)} />
    </HomePage>
  );
}

function CameraRuns() {
  const home = useHome();
  const camera = useHomeState((state) => state.camera);
  const first = useHomeState(({ steps }) => steps[0]);
  // The question whether the chair stands firm comes with these steps.
  const isAskedAfter = first !== undefined && furnitureToAsk(first.item, false) !== null;
  if (camera.state !== 'on') return null;
  return (
    <HomePage
      title={message('camera.sees')}
      back={() => home.back()}
      actions={
        <Button className="button button-primary" onPress={() => home.startExercise()}>
          {message('camera.begin')}
        </Button>
      }
    >
      <RoomNotice />
      <SteppedNotice />
      <div className="camera-look">
        <MirrorStage />
      </div>
      <CameraPicker onChoose={(wish) => void home.openCamera(wish)} />
      {first !== undefined && (
        <section className="home-section">
          <h2>{message('camera.set-up')}</h2>
          <ol className="home-list home-numbered">
            {[
              cameraPlace(first.item.task),
              ...(isAskedAfter ? [] : setupLines(first.item, first.side)),
              message('camera.light-and-sound'),
            ].map((sentence) => sentence !== null && <li key={sentence}>{sentence}</li>)}
          </ol>
        </section>
      )}
      {first !== undefined && <VerdictLegend item={first.item} />}
      <details className="home-sound">
        <summary>{message('sound.title')}</summary>
        <SoundChoices />
      </details>
    </HomePage>
  );
}
