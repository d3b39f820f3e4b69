import { useId, useState } from 'react';
import { bendTask } from '#core/assessments/countInwardBends';
import { riseTask } from '#core/assessments/countRises';
import type { TaskId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { ErrorLine } from '#ui/components/ErrorLine';
import { bendCountSentences, riseCountSentences } from '#words/assessmentSentences';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { usePatients } from '../patientsContext';
import type { CameraCount, CameraTest } from '../store/readCameraCount';

/** A count as it is taken over. */
export interface TakenCount {
  value: number;
  /** 'set 1 of Fri 3 Apr 2026' */
  of: string;
  seatHeightCm: number | null;
}

interface Props {
  test: CameraTest;
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
  const task = test === 'mini-squat' ? bendTask : riseTask;
  const sets = recordedSets(sessions, side, task);
  if (sets.length === 0)
    return (
      <p className="small soft programme-take">
        No recorded set ({exerciseName(task).toLowerCase()}, {side} leg) is kept, from which it could be
        counted.
      </p>
    );
  const take = async (id: string) => {
    setChosen(id);
    setSaid([]);
    setLost(false);
    const set = sets.find((one) => one.id === id);
    if (set === undefined) return;
    const found = await patients.readCameraCount(id, test);
    if (found === null) return setLost(true);
    const { said: sentences, value } = toldOf(found);
    setSaid(sentences);
    if (value !== null) onTake({ value, of: set.name, seatHeightCm: set.seatHeightCm });
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

/** What is said of a count, and the number that is taken over; null where there is none. */
function toldOf(found: CameraCount): { said: string[]; value: number | null } {
  if (found.test === 'mini-squat')
    return {
      said: bendCountSentences(found.count),
      value: found.count.kind === 'counted' ? found.count.inward : null,
    };
  return {
    said: riseCountSentences(found.test, found.count),
    value: found.count.kind === 'counted' ? found.count.value : null,
  };
}

/** The newest first. */
function recordedSets(sessions: readonly ListedSession[], side: Side, task: TaskId) {
  return [...sessions]
    .sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt))
    .flatMap(({ startedAt, sets }) =>
      sets.flatMap(({ line, reading, asked }) =>
        line.sessionId !== null && line.task === task && line.side === side && reading.state === 'read'
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
