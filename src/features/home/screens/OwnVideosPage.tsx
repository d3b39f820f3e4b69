import { Button } from 'react-aria-components';
import { itemName } from '#documents/plan/itemName';
import { Message } from '#ui/components/Message';
import { repetitionCount } from '#words/repetitionCount';
import { useHome, useHomeState } from '../homeContext';
import type { HomeSet } from '../store/homeState';
import { isFilmed } from '../store/sessionOf';
import { HomePage } from './HomePage';
import { OwnRecording } from './OwnRecording';

/** Sets that came from videos of the device's own camera app, and the way to the next one. */
export function OwnVideosPage() {
  const home = useHome();
  const sets = useHomeState((state) => state.sets);
  const all = useHomeState(({ steps }) => steps.filter(isFilmed).length);
  const left = all - sets.length;
  return (
    <HomePage
      title={sets.length === 1 ? 'Your video is here' : 'Your videos are here'}
      actions={
        <>
          {left > 0 && <OwnRecording words="Open the next video" isPrimary />}
          <Button
            className={left > 0 ? 'button' : 'button button-primary'}
            onPress={() => home.finishOwnRecordings()}
          >
            {left > 0 ? 'That is all for today' : 'Continue'}
          </Button>
        </>
      }
    >
      <ul className="saved-sets">
        {sets.map((set, index) => (
          <OwnSet key={index} set={set} />
        ))}
      </ul>
      {left > 0 && (
        <p>
          {left === 1 ? 'One more set is planned.' : `${left} more sets are planned.`} Film each one as a
          separate video.
        </p>
      )}
    </HomePage>
  );
}

function OwnSet({ set: { item, result, found, problem } }: { set: HomeSet }) {
  return (
    <li>
      <span>
        {itemName(item)}, {result.side} leg, set {result.number}
      </span>
      <span className="soft">{found === null ? 'saving …' : repetitionCount(found)}</span>
      {problem !== null && <Message kind="caution">{problem}</Message>}
    </li>
  );
}
