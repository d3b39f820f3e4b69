import { Label, ProgressBar } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { ProgressFill } from '#ui/components/ProgressFill';
import { useHomeState } from '../homeContext';

/** Progress of re-measuring stored videos; nothing where none waits. */
export function BackgroundLine() {
  const { waiting, share, isPaused, problems } = useHomeState((state) => state.background);
  return (
    <>
      {problems.map((problem) => (
        <Message key={problem} kind="caution" title="A recording could not be measured again">
          {problem}
        </Message>
      ))}
      {waiting > 0 && (
        <ProgressBar className="background-line" value={share ?? 0} maxValue={1}>
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
      )}
    </>
  );
}
