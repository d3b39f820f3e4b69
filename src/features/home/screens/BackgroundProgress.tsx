import { Label, ProgressBar } from 'react-aria-components';
import { ProgressFill } from '#ui/components/ProgressFill';
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
            {isPaused ? 'Waiting to measure' : 'Measuring'} {waiting === 1 ? 'a set' : `${waiting} sets`}{' '}
            again, more carefully. You do not need to wait.
          </Label>
          <ProgressFill percentage={percentage} />
        </>
      )}
    </ProgressBar>
  );
}
