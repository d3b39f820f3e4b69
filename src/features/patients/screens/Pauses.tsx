import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { PauseRecord } from '#documents/patient/caseEntries';
import { isoDay } from '#words/dateWords';
import { usePatients, usePatientsState } from '../patientsContext';
import { pauseLack, pauseSentence } from '../rules/pauses';
import { DayField } from './DayField';
import { EntryForm } from './EntryForm';
import { OpensForm } from './OpensForm';
import { TakeOut } from './TakeOut';

/** Days on which nothing is due: added, ended, and taken out where they were a mistake. */
export function Pauses() {
  const all = usePatientsState((state) => state.patient?.pauses) ?? [];
  const pauses = all.filter(({ withdrawn }) => withdrawn === null);
  /** The one whose end is being changed. */
  const [changing, setChanging] = useState<PauseRecord | null>(null);
  return (
    <>
      {pauses.length > 0 && <h3>Pauses</h3>}
      {pauses.length > 0 && (
        <ul className="small programme-list" aria-label="Pauses">
          {pauses.map((pause) => (
            <li key={pause.id}>
              {pauseSentence(pause)}{' '}
              <Button className="link-button" onPress={() => setChanging(pause)}>
                Change its end …
              </Button>{' '}
              <TakeOut list="pauses" id={pause.id} what="this pause" />
            </li>
          ))}
        </ul>
      )}
      {changing === null ? (
        <OpensForm label="Add a pause">{(close) => <PauseForm pause={null} onClose={close} />}</OpensForm>
      ) : (
        <PauseForm key={changing.id} pause={changing} onClose={() => setChanging(null)} />
      )}
    </>
  );
}

function PauseForm({ pause, onClose }: { pause: PauseRecord | null; onClose: () => void }) {
  const patients = usePatients();
  const today = usePatientsState((state) => isoDay(new Date(state.readAtMs).toISOString()));
  const [from, setFrom] = useState(pause?.from ?? today);
  const [to, setTo] = useState(pause === null ? '' : (pause.to ?? (today < pause.from ? pause.from : today)));
  const keep = (by: string) =>
    patients.record((patient, entry) => {
      const last = to === '' ? null : to;
      const changed = { at: entry.at, by };
      return {
        ...patient,
        pauses:
          pause === null
            ? [...patient.pauses, { ...entry, by, from, to: last, changed: null, withdrawn: null }]
            : patient.pauses.map((one) => (one.id === pause.id ? { ...one, to: last, changed } : one)),
      };
    });
  return (
    <EntryForm
      lack={() => pauseLack(from, to)}
      answer={pause === null ? 'Keep the pause' : 'Keep its end'}
      onKeep={keep}
      onClose={onClose}
    >
      {pause === null && <DayField label="First day of the pause" value={from} onChange={setFrom} />}
      <DayField label="Last day of it; empty: until further notice" value={to} onChange={setTo} />
    </EntryForm>
  );
}
