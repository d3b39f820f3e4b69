import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';
import { furnitureReminder } from '../placing/checks/checkFurniture';
import { CameraPicker } from './CameraPicker';
import { HomePage } from './HomePage';
import { MirrorStage } from './MirrorStage';
import { RoomNotice } from './RoomNotice';
import { SoundChoices } from './SoundChoices';
import { SteppedNotice } from './SteppedNotice';

/** What the camera sees, for anyone who has set it up before: what has to stand where in a few words, and one button. */
export function CameraAgain() {
  const home = useHome();
  const isOn = useHomeState(({ camera }) => camera.state === 'on');
  const reminder = useHomeState(({ steps: [first] }) =>
    first === undefined ? null : furnitureReminder(first.item.task),
  );
  return (
    <HomePage
      title={message('camera.ready')}
      back={() => home.back()}
      actions={
        <>
          {reminder !== null && <p>{reminder}</p>}
          <Button className="button button-primary" isDisabled={!isOn} onPress={() => home.startExercise()}>
            {message(isOn ? 'camera.begin' : 'camera.waiting')}
          </Button>
        </>
      }
    >
      <RoomNotice />
      <SteppedNotice />
      <div className="camera-look">{isOn && <MirrorStage />}</div>
      <p>{message('camera.place')}</p>
      <Disclosure className="home-more">
        <Button slot="trigger" className="button button-quiet">
          {message('camera.settings')}
        </Button>
        <DisclosurePanel className="home-section">
          <CameraPicker onChoose={(wish) => void home.openCamera(wish)} />
          <SoundChoices />
        </DisclosurePanel>
      </Disclosure>
    </HomePage>
  );
}
