import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { WhoWorksHere } from '#features/sharing/screens/WhoWorksHere';
import { KeyWords } from '#ui/components/KeyWords';
import { momentWords } from '#words/dateWords';
import { usePatientsState } from '../patientsContext';
import { logSentence, standingWords } from '../rules/logWords';

/** Entries that are shown at first. */
const shownAtFirst = 4;

/** Who did what with this patient: signed by each device, and never changed. */
export function WhoDidWhat({ sessions }: { sessions: readonly ListedSession[] }) {
  const { entries, missing } = usePatientsState((state) => state.log);
  const patient = usePatientsState((state) => state.patient)!;
  const [showsAll, setShowsAll] = useState(false);
  const newestFirst = [...entries].reverse();
  const shown = showsAll ? newestFirst : newestFirst.slice(0, shownAtFirst);
  const keys = [...new Set(shown.flatMap(({ entry, standing }) => (standing === 'fits' ? [entry.key] : [])))];
  return (
    <section className="card who-did" aria-labelledby="who-did-title">
      <h3 id="who-did-title">Who did what</h3>
      <WhoWorksHere />
      {missing > 0 && (
        <p role="note" className="who-did-wrong">
          {missing === 1 ? 'An entry is' : `${missing} entries are`} missing that{' '}
          {missing === 1 ? 'was' : 'were'} here, or that a later one follows. Somebody took{' '}
          {missing === 1 ? 'it' : 'them'} out, or an older record was put back.
        </p>
      )}
      {entries.length === 0 && (
        <p className="soft">
          Nothing yet. Decisions, limits, corrections, reviews, what is settled, and hand-overs appear here.
        </p>
      )}
      <ol className="small who-did-list" aria-label="Who did what">
        {shown.map((line, index) => {
          const { entry, standing } = line;
          return (
            <li key={`${entry.id} ${index}`}>
              {momentWords(entry.at)}: <strong>{entry.by === '' ? 'no initials' : entry.by}</strong>{' '}
              {logSentence(entry, patient, sessions)}{' '}
              <span className={standing === 'wrong' ? 'who-did-wrong' : 'soft'}>({standingWords(line)})</span>
            </li>
          );
        })}
      </ol>
      {entries.length > shown.length && (
        <Button className="button button-quiet" onPress={() => setShowsAll(true)}>
          Show all {entries.length}
        </Button>
      )}
      {showsAll && keys.length > 0 && (
        <p className="small soft">
          Words of the devices that signed: <KeyWords of={keys} />.
        </p>
      )}
    </section>
  );
}
