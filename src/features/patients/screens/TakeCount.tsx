import { useId, useState } from 'react';
import { riseTask, type RiseTest } from '#core/assessments/countRises';
import type { Side } from '#core/protocol/side';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { ErrorLine } from '#ui/components/ErrorLine';
import { riseCountSentences } from '#words/assessmentSentences';
import { dayWords } from '#words/dateWords';
import { usePatients } from '../patientsContext';

/** A count as it is taken over. */
export interface TakenCount {
  value: number;
  /** 'set 1 of Fri 3 Apr 2026' */
  of: string;
  seatHeightCm: number | null;
}

interface Props {
  test: RiseTest;
  side: Side;
  sessions: readonly ListedSession[];
  onTake: (taken: TakenCount) => void;
}

/** Takes the result of one leg from a kept recording, and says what is still for the eye. */
export function TakeCount({ test, side, sessions, onTake }: Props) {
  const patients = usePatients();
  const field = useId();
  const [chosen, setChosen] = useState('');
  const [said, setSaid] = useState<readonly string[]>([]);
  const [isLost, setLost] = useState(false);
  const sets = recordedSets(sessions, side);
  if (sets.length === 0)
    return (
      <p className="small soft programme-take">
        No recorded set of single-leg sit-to-stands with the {side} leg is kept, from which it could be
        counted.
      </p>
    );
  const take = async (id: string) => {
    setChosen(id);
    setSaid([]);
    setLost(false);
    const set = sets.find((one) => one.id === id);
    if (set === undefined) return;
    const count = await patients.readRiseCount(id, test);
    if (count === null) return setLost(true);
    setSaid(riseCountSentences(test, count));
    if (count.kind === 'counted')
      onTake({ value: count.value, of: set.name, seatHeightCm: set.seatHeightCm });
  };
  return (
    <div className="programme-take">
      <label htmlFor={field} className="small">
        Or take it from a recorded set
      </label>
      <select
        id={field}
        className="text-input"
        value={chosen}
        onChange={({ target }) => void take(target.value)}
      >
        <option value="">choose a set</option>
        {sets.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <div className="small" role="status">
        {said.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <ErrorLine
        sentence={
          isLost ? 'This recording is no longer kept here, or can’t be read. Enter it by hand.' : null
        }
        isSmall
      />
    </div>
  );
}

/** The newest first. */
function recordedSets(sessions: readonly ListedSession[], side: Side) {
  return [...sessions]
    .sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt))
    .flatMap(({ startedAt, sets }) =>
      sets.flatMap(({ line, reading, asked }) =>
        line.sessionId !== null && line.task === riseTask && line.side === side && reading.state === 'read'
          ? [
              {
                id: line.sessionId,
                name: `set ${line.number} of ${dayWords(startedAt)}`,
                seatHeightCm: (line.conditions ?? asked ?? null)?.seatHeightCm ?? null,
              },
            ]
          : [],
      ),
    );
}
