import { Button } from 'react-aria-components';
import { GiveToColleague } from '#features/sharing/screens/GiveToColleague';
import { dayWords } from '#words/dateWords';
import { usePatients, usePatientsState } from '../patientsContext';

/** What can be taken out of the patient's page besides the report: tables, and the whole as a record for other systems. */
export function HandOverCard() {
  const patients = usePatients();
  const making = usePatientsState((state) => state.making);
  const patient = usePatientsState((state) => state.patient);
  const isBusy = making !== null;
  return (
    <section className="card hand-over" aria-labelledby="hand-over-title">
      <h3 id="hand-over-title">Hand over</h3>
      <div className="button-row">
        <Button className="button" isDisabled={isBusy} onPress={() => void patients.saveTable('repetitions')}>
          Repetitions as CSV
        </Button>
        <Button className="button" isDisabled={isBusy} onPress={() => void patients.saveTable('visits')}>
          Sessions as CSV
        </Button>
        <Button className="button" isDisabled={isBusy} onPress={() => void patients.saveBundle()}>
          Record as FHIR
        </Button>
      </div>
      <p className="small soft" role="status">
        {making?.what === 'table' || making?.what === 'bundle'
          ? `Measuring for the ${making.what === 'table' ? 'table' : 'record'}: set ${making.done + 1} of ${Math.max(1, making.total)} …`
          : 'Tables and record carry the pseudonym and the day of each session. The record (HL7 FHIR R4) is for the practice’s own system: plans, answers, sets, tests, questionnaires and the report; no video, no joints.'}
      </p>
      {patient !== null && <GiveToColleague patientId={patient.id} pseudonym={patient.pseudonym} />}
      <HandOvers />
    </section>
  );
}

/** To whom the record went, and from whom it came. */
function HandOvers() {
  const handOvers = usePatientsState((state) => state.patient?.handOvers) ?? [];
  if (handOvers.length === 0) return null;
  return (
    <ul className="small" aria-label="Handed over">
      {handOvers.map(({ id, at, by, kind, colleague }) => (
        <li key={id}>
          {dayWords(at)}:{' '}
          {kind === 'given' ? `${by} to ${colleague}` : `taken over by ${by} from ${colleague}`}
        </li>
      ))}
    </ul>
  );
}
