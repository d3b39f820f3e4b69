import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import { compareConditions } from '#core/conditions/compareConditions';
import {
  ownError,
  repeatAgreement,
  repeatKinds,
  type Repeat,
  type RepeatKind,
} from '#core/reliability/ownError';
import { withRepeat } from '#documents/patient/mergePatients';
import { longestPatientText } from '#documents/patient/patientDocument';
import { useInitials } from '#features/sharing/screens/useInitials';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { ownErrorSentences, repeatSentences } from '#words/reliabilitySentences';
import { usePatients, usePatientsState } from '../patientsContext';
import type { Course, CourseSet } from '../rules/buildCourse';
import { AgreementPlot } from './AgreementPlot';
import { FoldCard } from './FoldCard';
import './programme.css';

/** The practice's own error, from sets that were filmed again; a pair of this patient can be added. */
export function OwnErrorCard({ course }: { course: Course }) {
  const repeats = usePatientsState((state) => state.repeats) ?? [];
  const sets = course.panels
    .flatMap(({ tracks }) => tracks.flatMap((track) => track.sets))
    .filter(({ peak }) => peak !== null);
  return (
    <FoldCard
      id="own-error-title"
      title="Your own error"
      empty={repeats.length === 0 ? 'No set was filmed again yet.' : null}
    >
      {repeatKinds.map((kind) => (
        <KindOfRepeat key={kind} kind={kind} repeats={repeats.filter((repeat) => repeat.kind === kind)} />
      ))}
      {sets.length < 2 ? <p className="soft">It takes two sets with a mean.</p> : <AddRepeat sets={sets} />}
    </FoldCard>
  );
}

function KindOfRepeat({ kind, repeats }: { kind: RepeatKind; repeats: readonly Repeat[] }) {
  if (kind === 'same-day' && repeats.length === 0) return null;
  const agreement = repeatAgreement(repeats);
  return (
    <>
      {ownErrorSentences(ownError(repeats), kind).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {repeats.length > 0 &&
        repeatSentences(agreement).map((sentence) => (
          <p key={sentence} className="small">
            {sentence}
          </p>
        ))}
      {agreement !== null && <AgreementPlot repeats={repeats} limits={agreement.limits} />}
    </>
  );
}

function AddRepeat({ sets }: { sets: readonly CourseSet[] }) {
  const patients = usePatients();
  const known = usePatientsState((state) => state.patient?.repeats) ?? [];
  const fields = useId();
  const [firstId, setFirst] = useState('');
  const [secondId, setSecond] = useState('');
  const { by, setBy, remember } = useInitials();
  const first = sets.find(({ recordingId }) => recordingId === firstId);
  const others =
    first === undefined
      ? []
      : sets.filter(
          (set) =>
            set.recordingId !== firstId &&
            set.atMs >= first.atMs &&
            compareConditions(first.conditions, set.conditions).differences.length === 0,
        );
  const isReady = others.some(({ recordingId }) => recordingId === secondId) && by.trim() !== '';
  const add = async () => {
    remember(by);
    await patients.record((patient, { at }) => ({
      ...patient,
      repeats: withRepeat(patient.repeats, { at, by: by.trim(), first: firstId, second: secondId }),
    }));
    setFirst('');
    setSecond('');
  };
  return (
    <details className="programme-thresholds">
      <summary>Add a set that was filmed again ({known.length} of this patient)</summary>
      <p className="small">
        The same set, done and measured alike. In between the person walked away and the camera was set up
        again; on another day, before treatment changed anything.
      </p>
      <div className="programme-decide">
        <label htmlFor={`${fields}-first`}>The first time</label>
        <select
          id={`${fields}-first`}
          className="text-input"
          value={firstId}
          onChange={({ target }) => setFirst(target.value)}
        >
          <option value="">choose a set</option>
          {sets.map((set) => (
            <option key={set.recordingId} value={set.recordingId}>
              {nameOf(set)}
            </option>
          ))}
        </select>
        <label htmlFor={`${fields}-second`}>Filmed again</label>
        <select
          id={`${fields}-second`}
          className="text-input"
          value={secondId}
          disabled={others.length === 0}
          onChange={({ target }) => setSecond(target.value)}
        >
          <option value="">
            {first !== undefined && others.length === 0 ? 'no later set is alike' : 'choose a set'}
          </option>
          {others.map((set) => (
            <option key={set.recordingId} value={set.recordingId}>
              {nameOf(set)}
            </option>
          ))}
        </select>
        <label htmlFor={`${fields}-by`}>Your initials</label>
        <input
          id={`${fields}-by`}
          className="text-input programme-initials"
          value={by}
          maxLength={longestPatientText.by}
          onChange={({ target }) => setBy(target.value)}
        />
        <div className="button-row">
          <Button className="button" isDisabled={!isReady} onPress={() => void add()}>
            Add the pair
          </Button>
        </div>
      </div>
    </details>
  );
}

function nameOf({ atMs, task, side, number }: CourseSet): string {
  return `${dayWords(new Date(atMs).toISOString())}, ${exerciseName(task).toLowerCase()}, ${side}, set ${number}`;
}
