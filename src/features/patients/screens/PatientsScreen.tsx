import { useDeferredValue, useEffect, useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import { LockButton } from '#features/lock/screens/LockButton';
import { LockTrouble } from '#features/lock/screens/LockTrouble';
import { useKeptSessionsState } from '#features/sessions/keptSessionsContext';
import { Removals } from '#features/sessions/screens/Removals';
import { SentFiles } from '#features/sessions/screens/SentFiles';
import { BackupButton } from '#features/sharing/screens/BackupButton';
import { KeyButton } from '#features/sharing/screens/KeyButton';
import { PracticeButton } from '#features/sharing/screens/PracticeButton';
import { TakeOverButton } from '#features/sharing/screens/TakeOverButton';
import { WhoWorksHere } from '#features/sharing/screens/WhoWorksHere';
import { useNavigation } from '#shell/navigation/navigationContext';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { usePatients, usePatientsState } from '../patientsContext';
import { coverAfterDays, coverRows, searchPatients, type PatientRow } from '../rules/listPatients';
import { AddPatient } from './AddPatient';
import { DemoClinic } from './DemoClinic';
import { PatientList } from './PatientList';
import '#features/sessions/screens/sessions.css';
import './patients.css';

/** Everybody who is kept on this device, those who need a look first. */
export function PatientsScreen() {
  const navigation = useNavigation();
  const patients = usePatients();
  const problem = usePatientsState((state) => state.problem);
  useEffect(() => {
    void patients.enter();
    return () => patients.leave();
  }, [patients]);
  const rows = usePatientsState((state) => state.rows);
  const wayTo = (pseudonym: string) => {
    const row = rows?.find((one) => one.pseudonym === pseudonym);
    return row === undefined ? null : () => void navigation.show('patient', false, row.id);
  };
  return (
    <div className="patients">
      <header className="sessions-head">
        <Brand />
        <h1>Patients</h1>
        <Button className="button button-quiet" onPress={() => void navigation.show('plan')}>
          Write a plan
        </Button>
        <Button className="button button-quiet" onPress={() => void navigation.show('sessions')}>
          Kept sessions
        </Button>
        <Button className="button button-quiet" onPress={() => void navigation.show('mirror')}>
          Live mirror
        </Button>
        <BackupButton />
        <LockButton />
        <KeyButton />
        <PracticeButton />
        <TakeOverButton />
        <Button className="button button-quiet" onPress={() => navigation.returnTo('start')}>
          Back to the start
        </Button>
      </header>
      <LockTrouble />
      <ProblemMessage problem={problem} onClose={() => patients.dismissProblem()} />
      <WhoWorksHere />
      <SentFiles wayTo={wayTo} />
      <Everybody />
      <Removals />
    </div>
  );
}

function Everybody() {
  const rows = usePatientsState((state) => state.rows);
  const removals = useKeptSessionsState((state) => state.removals);
  const [search, setSearch] = useState('');
  const [isCovering, setCovering] = useState(false);
  const looked = useDeferredValue(search);
  if (rows === null) return <p className="soft">Looking for patients …</p>;
  const going = new Set(removals.flatMap(({ records }) => records.map(({ id }) => id)));
  const left = rows.filter(({ id }) => !going.has(id));
  const waiting = coverRows(left);
  const found = searchPatients(isCovering ? waiting : left, looked);
  return (
    <main className="patients-main">
      <div className="patients-tools">
        <SearchField className="field patients-search" value={search} onChange={setSearch}>
          <Label className="field-label">Search for a pseudonym</Label>
          <Input className="text-input" />
        </SearchField>
        <AddPatient known={left.map(({ pseudonym }) => pseudonym)} />
        {left.length > 0 && <DemoClinic rows={left} />}
        {(waiting.length > 0 || isCovering) && (
          <Button className="button" aria-pressed={isCovering} onPress={() => setCovering(!isCovering)}>
            Needs a look, not looked at for {coverAfterDays} days: {waiting.length}
          </Button>
        )}
        <Counted rows={left} found={found.length} isSearching={isCovering || looked.trim() !== ''} />
      </div>
      {left.length === 0 ? (
        <section className="card patients-empty">
          <h2>Nobody is kept on this device yet</h2>
          <p>
            A patient appears here with the first session that is opened or kept under a pseudonym. Nothing
            leaves this device, unless you hand a patient over or share under “Practice”.
          </p>
          <p>
            To look around first, load three invented patients with six weeks of sessions. They are marked as
            invented, and go again with one press.
          </p>
          <DemoClinic rows={left} />
        </section>
      ) : (
        <PatientList rows={found} search={looked} isCovering={isCovering} />
      )}
    </main>
  );
}

interface CountedProps {
  rows: readonly PatientRow[];
  found: number;
  isSearching: boolean;
}

function Counted({ rows, found, isSearching }: CountedProps) {
  const progress = usePatientsState((state) => state.progress);
  const fresh = rows.filter(({ counts }) => counts.new > 0).length;
  const all = `${rows.length} ${rows.length === 1 ? 'patient' : 'patients'}`;
  return (
    <p className="small soft patients-counted" role="status">
      {isSearching ? `${found} of ${all}` : `${all}, ${fresh} with new sessions`}
      {progress !== null && progress.total > 1 && (
        <>
          {' '}
          · reading what is new: {progress.done} of {progress.total}
        </>
      )}
    </p>
  );
}
