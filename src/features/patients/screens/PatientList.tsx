import { useState, type KeyboardEvent } from 'react';
import { Button } from 'react-aria-components';
import { useNavigation } from '#shell/navigation/navigationContext';
import { dayWords } from '#words/dateWords';
import type { PatientRow } from '../rules/listPatients';

/** Lines drawn at once: more than fit a screen, few enough to appear at once. */
const drawnAtOnce = 60;

interface Props {
  rows: readonly PatientRow[];
  /** What is searched for: another search shows the first lines again. */
  search: string;
  /** Whether only those are listed who were not looked at for days: each line then says for how many. */
  isCovering: boolean;
}

/** One line a patient; the up and down keys move between them. */
export function PatientList({ rows, search, isCovering }: Props) {
  const [shown, setShown] = useState({ search, count: drawnAtOnce });
  const count = shown.search === search ? shown.count : drawnAtOnce;
  if (rows.length === 0)
    return (
      <p className="soft">
        {isCovering && search.trim() === ''
          ? 'Somebody looked at everything that needs it.'
          : 'Nobody here has a pseudonym like that. Check how it is written.'}
      </p>
    );
  return (
    <>
      <ul className="patients-list" aria-label="Patients" onKeyDown={moveFocus}>
        {rows.slice(0, count).map((row) => (
          <PatientLine key={row.id} row={row} isCovering={isCovering} />
        ))}
      </ul>
      {rows.length > count && (
        <Button
          className="button patients-more"
          onPress={() => setShown({ search, count: count + 4 * drawnAtOnce })}
        >
          Show more of the other {rows.length - count}
        </Button>
      )}
    </>
  );
}

function PatientLine({ row, isCovering }: { row: PatientRow; isCovering: boolean }) {
  const navigation = useNavigation();
  const { id, pseudonym, lastAt, counts, sessions, needs, unseenDays } = row;
  return (
    <li>
      <button
        type="button"
        className="patients-line"
        onClick={() => void navigation.show('patient', false, id)}
      >
        <strong className="patients-name">{pseudonym}</strong>
        <span className="patients-new">{counts.new > 0 && <mark>{counts.new} new</mark>}</span>
        <span className="patients-needs small">
          {isCovering && <span className="sessions-need">not looked at for {unseenDays} days</span>}
          {needs.map((need) => (
            <span key={need} className="sessions-need">
              {need}
            </span>
          ))}
          {needs.length === 0 && sessions > 0 && <span className="soft">nothing stands out</span>}
        </span>
        <span className="small soft number patients-last">
          {lastAt === null ? 'no session yet' : dayWords(lastAt)}
        </span>
      </button>
    </li>
  );
}

/** From line to line, with the keys that move in any list. */
function moveFocus(event: KeyboardEvent<HTMLUListElement>) {
  const lines = [...event.currentTarget.querySelectorAll('button')];
  const at = lines.indexOf(document.activeElement as HTMLButtonElement);
  const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: lines.length - 1 }[event.key];
  const line = to === undefined ? undefined : lines[to];
  if (line === undefined) return;
  event.preventDefault();
  line.focus();
}
