import { useState } from 'react';
import type { CriteriaCardId } from '#core/criteria/criteria';
import { handMeasures } from '#core/criteria/handMeasures';
import type { HandMeasureId } from '#core/criteria/handRanges';
import { isoDay } from '#words/dateWords';
import { usePatients, usePatientsState } from '../patientsContext';
import type { TrackChange } from '../rules/changes';
import { criteriaLines, criterionSentence, stateWords } from '../rules/criteriaLines';
import { handEntries, handMeasureLabel, handValueLack } from '../rules/handValues';
import { DayField } from './DayField';
import { EntryField } from './EntryField';
import { EntryForm } from './EntryForm';
import { FoldCard } from './FoldCard';
import { LineField } from './LineField';
import { OpensForm } from './OpensForm';
import { TakeOut } from './TakeOut';

const cards: readonly [id: CriteriaCardId, title: string][] = [
  ['running', 'Before running'],
  ['sport', 'Before sport with turns'],
];

/** What is looked at before running and sport after surgery: line by line, never as a sum. */
export function CriteriaCard({ changes }: { changes: readonly TrackChange[] }) {
  const patient = usePatientsState((state) => state.patient);
  const readAtMs = usePatientsState((state) => state.readAtMs);
  if (patient === null || patient.surgery === null) return null;
  const entries = handEntries(patient.criteria);
  return (
    <FoldCard id="criteria-title" title="Lines before running and sport" empty={null}>
      <p className="small soft">
        Each line by itself: they are no score and are not counted. The decision is taken by patient, surgeon,
        therapist and coach together.
      </p>
      {cards.map(([card, title]) => (
        <article key={card} className="programme-item">
          <h4>{title}</h4>
          <ul className="programme-list">
            {criteriaLines(card, patient, readAtMs, changes).map((line) => (
              <li key={line.criterion.id}>
                {line.criterion.name}: <strong>{stateWords[line.state]}</strong>. {criterionSentence(line)}{' '}
                <span className="small soft programme-source">
                  {line.criterion.source ?? 'Common practice, no source'}.
                </span>
              </li>
            ))}
          </ul>
        </article>
      ))}
      <OpensForm label="Write down a value">{(close) => <HandValueForm onClose={close} />}</OpensForm>
      {entries.length > 0 && (
        <details className="small">
          <summary>Values entered by hand ({entries.length})</summary>
          <ul className="programme-list">
            {entries.map(({ id, words }) => (
              <li key={id}>
                {words} <TakeOut list="criteria" id={id} what="this value" />
              </li>
            ))}
          </ul>
        </details>
      )}
      <p className="small soft">
        Tests and questionnaires of this page are used where they are written down, and filmed tests as
        measured.
      </p>
    </FoldCard>
  );
}

function HandValueForm({ onClose }: { onClose: () => void }) {
  const patients = usePatients();
  const today = usePatientsState((state) => isoDay(new Date(state.readAtMs).toISOString()));
  const [measure, setMeasure] = useState<HandMeasureId>(handMeasures[0].id);
  const [text, setText] = useState('');
  const [on, setOn] = useState(today);
  const keep = (by: string) =>
    patients.record((patient, entry) => ({
      ...patient,
      criteria: [
        ...patient.criteria,
        { ...entry, by, on, measure, value: Number(text.replace(',', '.')), withdrawn: null },
      ],
    }));
  return (
    <EntryForm
      lack={() => handValueLack(measure, text, on, today)}
      answer="Keep the value"
      onKeep={keep}
      onClose={onClose}
    >
      <EntryField label="What was measured">
        {(id) => (
          <select
            id={id}
            className="text-input"
            value={measure}
            onChange={({ target }) => setMeasure(target.value as HandMeasureId)}
          >
            {handMeasures.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </select>
        )}
      </EntryField>
      <LineField
        label={handMeasureLabel(measure)}
        value={text}
        maxLength={8}
        inputMode="decimal"
        onChange={setText}
      />
      <DayField label="Measured on" value={on} max={today} onChange={setOn} />
    </EntryForm>
  );
}
