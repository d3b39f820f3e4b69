import { Button } from 'react-aria-components';
import { dayWords } from '#words/dateWords';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';

/** How last time went in one line, which leads to all of it. */
export function LastTimeLine() {
  const home = useHome();
  const last = useHomeState(({ today }) => today.last);
  if (last === null) return null;
  const { inLine, sets, startedAt } = last;
  const day = dayWords(startedAt);
  return (
    <Button
      className="button button-quiet today-last"
      aria-label={
        inLine === null
          ? message('today.last-sets.what', { day, sets })
          : message('today.last-about.what', { day, ...inLine })
      }
      onPress={() => void home.showLastTime()}
    >
      {inLine === null ? message('today.last-sets', { sets }) : message('today.last-about', inLine)}
    </Button>
  );
}
