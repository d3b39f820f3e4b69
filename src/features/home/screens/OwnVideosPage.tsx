import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { repetitionCount } from '#words/repetitionCount';
import { useHome, useHomeState } from '../homeContext';
import type { HomeSet } from '../store/homeState';
import { isFilmed } from '../store/sessionOf';
import { HomePage } from './HomePage';
import { OwnRecording } from './OwnRecording';
import { setName } from './setWords';

/** Sets that came from videos of the device's own camera app, and the way to the next one. */
export function OwnVideosPage() {
  const home = useHome();
  const sets = useHomeState((state) => state.sets);
  const all = useHomeState(({ steps }) => steps.filter(isFilmed).length);
  const left = all - sets.length;
  return (
    <HomePage
      title={message('own.title', { count: sets.length })}
      actions={
        <>
          {left > 0 && <OwnRecording words={message('own.next')} isPrimary />}
          <Button
            className={left > 0 ? 'button' : 'button button-primary'}
            onPress={() => home.finishOwnRecordings()}
          >
            {message(left > 0 ? 'own.all' : 'home.continue')}
          </Button>
        </>
      }
    >
      <ul className="saved-sets">
        {sets.map((set, index) => (
          <OwnSet key={index} set={set} />
        ))}
      </ul>
      {left > 0 && <p>{message('own.left', { left })}</p>}
    </HomePage>
  );
}

function OwnSet({ set: { item, result, found, problem } }: { set: HomeSet }) {
  return (
    <li>
      <span>{setName({ item, result })}</span>
      <span className="soft">{found === null ? message('own.saving') : repetitionCount(found)}</span>
      {problem !== null && <Message kind="caution">{problem}</Message>}
    </li>
  );
}
