import { useState } from 'react';
import { longestCaseText } from '#documents/patient/caseEntries';
import { isoDay } from '#words/dateWords';
import { usePatients, usePatientsState } from '../patientsContext';
import {
  answersOf,
  questionnaireForms,
  scoreOf,
  type FormQuestion,
  type Typed,
} from '../rules/questionnaireForm';
import { DayField } from './DayField';
import { EntryField } from './EntryField';
import { EntryForm } from './EntryForm';
import { LineField } from './LineField';

const nothing: Typed = { answers: {}, names: {} };

/** A questionnaire as a form, as the patient answered it on paper or aloud. */
export function QuestionnaireEntry({ onClose }: { onClose: () => void }) {
  const patients = usePatients();
  const imported = usePatientsState((state) => state.imported);
  const answered = usePatientsState((state) => state.patient?.questionnaires) ?? [];
  const today = usePatientsState((state) => isoDay(new Date(state.readAtMs).toISOString()));
  const forms = questionnaireForms(imported);
  const [url, setUrl] = useState(forms[0]!.url);
  const form = forms.find((one) => one.url === url) ?? forms[0]!;
  const [on, setOn] = useState(today);
  const [typed, setTyped] = useState(nothing);
  const choose = (next: string) => {
    setUrl(next);
    // The same activities are asked about as the last time.
    const last = answered.filter((one) => one.of === next && one.withdrawn === null).at(-1);
    const names = Object.fromEntries((last?.answers ?? []).map(({ linkId, question }) => [linkId, question]));
    setTyped({ answers: {}, names });
  };
  const answers = answersOf(form, typed);
  const lack = () => {
    if (on === '') return 'Choose the day of the answers.';
    if (on > today) return 'The day is in the future. Choose the day of the answers.';
    return typeof answers === 'string' ? answers : null;
  };
  const keep = (by: string) =>
    patients.record((patient, entry) => {
      if (typeof answers === 'string') return patient;
      const { version, title } = form;
      const { score } = scoreOf(form.url, answers);
      const made = { ...entry, by, withdrawn: null, on, of: form.url, version, title, answers, score };
      return { ...patient, questionnaires: [...patient.questionnaires, made] };
    });
  return (
    <EntryForm lack={lack} answer="Keep the answers" onKeep={keep} onClose={onClose}>
      <EntryField label="Questionnaire">
        {(id) => (
          <select
            id={id}
            className="text-input"
            value={form.url}
            onChange={({ target }) => choose(target.value)}
          >
            {forms.map((one) => (
              <option key={one.url} value={one.url}>
                {one.title}
              </option>
            ))}
          </select>
        )}
      </EntryField>
      {(form.how !== '' || form.copyright !== '') && (
        <p className="small soft programme-wide">
          {form.how} {form.copyright}
        </p>
      )}
      <DayField label="Answered on" value={on} max={today} onChange={setOn} />
      {form.questions.map((question) => (
        <Asked
          key={`${form.url} ${question.linkId}`}
          question={question}
          typed={typed}
          onType={(part) =>
            setTyped({
              answers: { ...typed.answers, ...part.answers },
              names: { ...typed.names, ...part.names },
            })
          }
        />
      ))}
    </EntryForm>
  );
}

interface AskedProps {
  question: FormQuestion;
  typed: Typed;
  onType: (part: Partial<Typed>) => void;
}

function Asked({ question, typed, onType }: AskedProps) {
  const { linkId, heading, asks, range, isNamed } = question;
  const ends = range === null ? '' : ` (${range.min} ${range.low}, ${range.max} ${range.high})`;
  const name = typed.names[linkId] ?? '';
  const label = isNamed ? `How well it goes${ends}` : `${asks}${ends}`;
  return (
    <>
      {heading !== '' && <p className="small programme-wide">{heading}</p>}
      {isNamed && (
        <LineField
          label={`${asks}, in the patient’s words`}
          value={name}
          maxLength={longestCaseText.question}
          onChange={(words) => onType({ names: { [linkId]: words } })}
        />
      )}
      <EntryField label={label}>
        {(id) => (
          <AnswerField
            id={id}
            question={question}
            value={typed.answers[linkId] ?? ''}
            onChange={(value) => onType({ answers: { [linkId]: value } })}
          />
        )}
      </EntryField>
    </>
  );
}

interface AnswerProps {
  id: string;
  question: FormQuestion;
  value: string;
  onChange: (value: string) => void;
}

function AnswerField({ id, question: { kind, options }, value, onChange }: AnswerProps) {
  const common = { id, className: 'text-input', value };
  if (kind === 'choice' || kind === 'yes-no')
    return (
      <select {...common} onChange={({ target }) => onChange(target.value)}>
        <option value="">not answered</option>
        {kind === 'yes-no'
          ? ['yes', 'no'].map((word) => <option key={word}>{word}</option>)
          : options.map(({ display }, index) => (
              <option key={index} value={index}>
                {display}
              </option>
            ))}
      </select>
    );
  return (
    <input
      {...common}
      type={kind === 'date' ? 'date' : 'text'}
      inputMode={kind === 'number' ? 'decimal' : 'text'}
      maxLength={kind === 'text' ? longestCaseText.answer : 20}
      onChange={({ target }) => onChange(target.value)}
    />
  );
}
