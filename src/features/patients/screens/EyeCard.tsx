import { group, shuffler } from 'd3-array';
import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import { eyeAgreement, eyeRepeat } from '#core/reliability/eyeAgreement';
import { withOwnEye } from '#documents/patient/mergePatients';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { ErrorLine } from '#ui/components/ErrorLine';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { eyeSentences, eyeTwiceSentences } from '#words/reliabilitySentences';
import { usePatients, usePatientsState } from '../patientsContext';
import { leastDaysBetween } from '../rules/practiceEyes';
import type { EyeSet } from '../store/readEyeSet';
import { EyeShow } from './EyeShow';
import { FoldCard } from './FoldCard';
import './programme.css';

/** The therapists' own eyes against what was measured; a set of this patient whose video is kept can be judged. */
export function EyeCard({ sessions }: { sessions: readonly ListedSession[] }) {
  const patients = usePatients();
  const eyes = usePatientsState((state) => state.eyes) ?? [];
  const twice = group(
    usePatientsState((state) => state.twice),
    ({ by }) => by,
  );
  const twiceSentences = (by: string) => {
    const judged = twice.get(by);
    return judged === undefined ? [] : eyeTwiceSentences(eyeRepeat(judged));
  };
  const known = usePatientsState((state) => state.patient?.ownEye) ?? [];
  const field = useId();
  const [chosen, setChosen] = useState('');
  const [shown, setShown] = useState<EyeSet | null>(null);
  const [lacks, setLacks] = useState<string | null>(null);
  const sets = filmedSets(sessions);
  if (sets.length + eyes.length === 0) return null;
  const isChosen = sets.some(({ id }) => id === chosen);
  const begin = async () => {
    const found = await patients.readEyeSet(sessions, chosen);
    if (found === null) return setLacks('The video of this set is no longer kept here. Choose another set.');
    if (found.repetitions.length === 0)
      return setLacks('No repetition of this set counts. Choose another set.');
    setLacks(null);
    const isAgain = known.some(({ recordingId }) => recordingId === chosen);
    setShown(isAgain ? { ...found, repetitions: inAnyOrder([...found.repetitions]) } : found);
  };
  return (
    <FoldCard
      id="eye-title"
      title="Your own eye"
      empty={eyes.length === 0 ? 'No set was judged by eye yet.' : null}
    >
      {eyes.length === 0 && (
        <p className="soft">
          Judge the repetitions of a set before you look at its result. Then both are held against each other.
        </p>
      )}
      {[...group(eyes, ({ by }) => by)].map(([by, judged]) => (
        <div key={by} className="programme-item">
          <h4>{by}</h4>
          {eyeSentences(eyeAgreement(judged)).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {twiceSentences(by).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      ))}
      {sets.length > 0 && (
        <div className="programme-decide">
          <label htmlFor={field}>Set to judge by eye</label>
          <select
            id={field}
            className="text-input"
            value={isChosen ? chosen : ''}
            onChange={({ target }) => {
              setChosen(target.value);
              setLacks(null);
            }}
          >
            <option value="">choose a set</option>
            {sets.map(({ id, name }) => {
              const by = known.filter(({ recordingId }) => recordingId === id).map((one) => one.by);
              return (
                <option key={id} value={id}>
                  {name}
                  {by.length === 0 ? '' : `, judged by ${[...new Set(by)].join(', ')}`}
                </option>
              );
            })}
          </select>
          <div className="button-row">
            <Button className="button" isDisabled={!isChosen} onPress={() => void begin()}>
              Judge by eye
            </Button>
          </div>
          <ErrorLine sentence={lacks} isSmall />
        </div>
      )}
      <p className="small soft">
        The video is shown without lines and without a result. Against measuring each set counts once for each
        therapist: later judgements are made after the result was seen. A set that the same therapist judges
        again after {leastDaysBetween} days or more is shown in another order, and held against the first
        time. Neither eye nor measuring is the truth here.
      </p>
      {shown !== null && (
        <EyeShow
          set={shown}
          onClose={() => setShown(null)}
          onKeep={(answers, by) => {
            const { recordingId } = shown;
            setShown(null);
            setChosen('');
            void patients.record((patient, { at }) => ({
              ...patient,
              ownEye: withOwnEye(patient.ownEye, { at, by, recordingId, answers }),
            }));
          }}
        />
      )}
    </FoldCard>
  );
}

/** So that the place in the set is no reminder. */
const inAnyOrder = shuffler(Math.random);

/** Sets with a video, the newest first. */
function filmedSets(sessions: readonly ListedSession[]) {
  return [...sessions]
    .sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt))
    .flatMap(({ startedAt, sets }) =>
      sets.flatMap(({ line: { sessionId: id, task, side, number }, reading }) =>
        id !== null && reading.state === 'read' && reading.hasVideo
          ? [
              {
                id,
                name: `${dayWords(startedAt)}, ${exerciseName(task).toLowerCase()}, ${side}, set ${number}`,
              },
            ]
          : [],
      ),
    );
}
