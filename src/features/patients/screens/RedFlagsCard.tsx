import { useState } from 'react';
import { Button } from 'react-aria-components';
import { clinicianFlags } from '#core/safety/clinicianFlags';
import { isoDay } from '#words/dateWords';
import { usePatients, usePatientsState } from '../patientsContext';
import { flagsOf, flagSources, redFlagsSentences, type FlagAnswer } from '../rules/caseWords';
import { DayField } from './DayField';
import { EntryField } from './EntryField';
import { EntryForm } from './EntryForm';
import { FoldCard } from './FoldCard';
import { OpensForm } from './OpensForm';
import { TakeOut } from './TakeOut';

/** Warning signs that a clinician asked about; they refer, and diagnose nothing. */
export function RedFlagsCard() {
  const all = usePatientsState((state) => state.patient?.redFlags) ?? [];
  const visits = all.filter(({ withdrawn }) => withdrawn === null);
  return (
    <FoldCard
      id="red-flags-title"
      title="Warning signs asked about"
      empty={visits.length === 0 ? 'Nothing is written down of the first visit yet.' : null}
    >
      {visits.map((visit) => (
        <div key={visit.id} className={visit.applied.length > 0 ? 'message message-caution' : undefined}>
          <div>
            {redFlagsSentences(visit).map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
            <TakeOut list="redFlags" id={visit.id} what="this entry" />
          </div>
        </div>
      ))}
      <OpensForm label="Write down a visit">{(close) => <RedFlagsForm onClose={close} />}</OpensForm>
      <details className="small">
        <summary>Where these signs come from</summary>
        <p>Not a complete list. A sign that applies asks for somebody else to look; it is no diagnosis.</p>
        <ul className="programme-list">
          {flagSources().map((source) => (
            <li key={source}>{source}</li>
          ))}
        </ul>
      </details>
    </FoldCard>
  );
}

function RedFlagsForm({ onClose }: { onClose: () => void }) {
  const patients = usePatients();
  const today = usePatientsState((state) => isoDay(new Date(state.readAtMs).toISOString()));
  const [on, setOn] = useState(today);
  const [answers, setAnswers] = useState<Record<string, FlagAnswer>>({});
  const flags = flagsOf(answers);
  const lack = () => {
    if (on === '') return 'Choose the day of the visit.';
    return flags === null ? 'Say of one sign at least whether it applies.' : null;
  };
  const keep = (by: string) =>
    patients.record((patient, entry) => ({
      ...patient,
      redFlags: [...patient.redFlags, { ...entry, by, on, ...flags!, withdrawn: null }],
    }));
  const restNo = () =>
    setAnswers(Object.fromEntries(clinicianFlags.map(({ id }) => [id, answers[id] ?? 'no'])));
  return (
    <EntryForm lack={lack} answer="Keep the answers" onKeep={keep} onClose={onClose}>
      <DayField label="Day of the visit" value={on} onChange={setOn} />
      {clinicianFlags.map(({ id: flag, asks }) => (
        <EntryField key={flag} label={asks}>
          {(id) => (
            <select
              id={id}
              className="text-input"
              value={answers[flag] ?? 'not-asked'}
              onChange={({ target }) => setAnswers({ ...answers, [flag]: target.value as FlagAnswer })}
            >
              <option value="not-asked">not asked</option>
              <option value="no">no</option>
              <option value="applies">applies</option>
            </select>
          )}
        </EntryField>
      ))}
      <div className="button-row">
        <Button className="button" onPress={restNo}>
          All others were asked: no
        </Button>
      </div>
    </EntryForm>
  );
}
