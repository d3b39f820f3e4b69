import { Label, ProgressBar } from 'react-aria-components';
import { ProgressFill } from '#ui/components/ProgressFill';
import { message } from '#words/messages/message';
import { useHomeState } from '../homeContext';

/** How far stored videos are measured again; nothing where none waits. */
export function BackgroundProgress() {
  const { waiting, current, isPaused } = useHomeState((state) => state.background);
  if (waiting === 0) return null;
  return (
    <ProgressBar className="background-line" value={current?.share ?? 0} maxValue={1}>
      {({ percentage }) => (
        <>
          <Label>
            {message('background.measuring', {
              state: isPaused ? 'waiting' : 'measuring',
              sets: waiting,
            })}
          </Label>
          <ProgressFill percentage={percentage} />
        </>
      )}
    </ProgressBar>
  );
}
