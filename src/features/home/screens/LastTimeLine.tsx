import { Button } from 'react-aria-components';
import { dayWords } from '#words/dateWords';
import { useHome, useHomeState } from '../homeContext';
import { setWords } from './setWords';

/** How last time went in one line, which leads to all of it. */
export function LastTimeLine() {
  const home = useHome();
  const last = useHomeState(({ today }) => today.last);
  if (last === null) return null;
  const { inLine, sets, startedAt } = last;
  const line = inLine === null ? setWords(sets) : `about ${inLine.about} of ${inLine.of}`;
  const meaning = inLine === null ? line : `${line} repetitions stayed over the foot`;
  return (
    <Button
      className="button button-quiet today-last"
      aria-label={`Last time, ${dayWords(startedAt)}: ${meaning}. Show all of it`}
      onPress={() => void home.showLastTime()}
    >
      Last time: {line}
    </Button>
  );
}
