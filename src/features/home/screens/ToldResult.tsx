import { Button } from 'react-aria-components';
import { message } from '#words/messages/message';
import { useHome, useHomeStep } from '../homeContext';
import { sessionResult } from '../rules/sessionResult';
import type { ChangeSinceLast } from '../store/changeSinceLast';
import type { HomeSet } from '../store/homeState';
import { changeWords } from './changeWords';
import { setName } from './setWords';
import { ToldThing } from './ToldThing';

interface Props {
  told: readonly HomeSet[];
  /** What is different from the last time, beyond error. */
  change: ChangeSinceLast | null;
}

/** One thing done well and one to practise, of all sets. */
export function ToldResult({ told, change }: Props) {
  const home = useHome();
  const canLook = useHomeStep('summary', ({ replays }) => replays.length > 0);
  const sets = told.flatMap((set) => (set.summary === null ? [] : [{ set, summary: set.summary }]));
  const result = sessionResult(sets);
  if (result === null) return null;
  const { well, practise } = result;
  const nameOf = ({ set }: { set: HomeSet }) => (sets.length === 1 ? null : setName(set));
  const hasFault = (practise.summary.faults ?? 0) > 0;
  const isFirst = sets.some(({ set }) => set.numbers !== 'careful');
  const isComing = sets.some(({ set }) => set.numbers === 'coming');
  return (
    <div className="home-section">
      <ToldThing kind="well" title={message('summary.well')} of={nameOf(well)} text={well.summary.well} />
      <ToldThing
        kind={hasFault ? 'practise' : 'well'}
        title={message(hasFault ? 'summary.practise' : 'summary.next-time')}
        of={nameOf(practise)}
        text={practise.summary.practise}
      />
      {change !== null && <p>{changeWords(change)}</p>}
      {isFirst && (
        <p className="soft">
          {message('summary.first')}
          {isComing && ` ${message('summary.coming')}`}
        </p>
      )}
      {canLook && (
        <div className="button-row">
          <Button className="button" onPress={() => void home.showReplay()}>
            {message('summary.look')}
          </Button>
        </div>
      )}
    </div>
  );
}
