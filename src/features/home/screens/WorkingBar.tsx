import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import type { GuideView } from '../guide/guideView';
import { useHome } from '../homeContext';
import type { Offered } from './offered';
import { StopSign } from './StopSign';

const others: readonly Offered[] = ['start-anyway', 'end-set', 'pause'];
/** There is room for so many besides the stop. */
const mostOthers = 2;

/** The buttons in one thin bar, while nobody is near enough to press them; the stop is half of it. */
export function WorkingBar({ view: { presses } }: { view: GuideView }) {
  const home = useHome();
  const isOffered = (press: Offered) => presses.includes(press);
  const shown = [
    ...others.filter(isOffered).slice(0, mostOthers),
    ...(isOffered('stop') ? ['stop' as const] : []),
  ];
  return (
    <div className="film-bar">
      {shown.map((press) => (
        <Button
          key={press}
          className={press === 'stop' ? 'button film-stop' : 'button'}
          onPress={() => home.press(press)}
        >
          {press === 'stop' && <StopSign />}
          {message(`press.${press}`)}
        </Button>
      ))}
    </div>
  );
}
