import { useId, useState, type FormEvent } from 'react';
import { Button } from 'react-aria-components';
import { assessments, findAssessment, type AssessmentId } from '#core/assessments/assessments';
import { effusionGrades } from '#core/assessments/effusion';
import { sides } from '#core/protocol/side';
import { longestPatientText } from '#documents/patient/patientDocument';
import { protocolSentences } from '#words/assessmentSentences';
import { capitalised } from '#words/capitalised';
import { usePatients } from '../patientsContext';
import { parseTries } from '../rules/assessmentResults';

const nothing = { asDone: '', left: '', right: '', pain: '', remark: '', by: '' };

/** Writes down a test as it was done by hand, with both legs. */
export function TestForm({ onClose }: { onClose: () => void }) {
  const patients = usePatients();
  const fields = useId();
  const [test, setTest] = useState<AssessmentId>(assessments[0]!.id as AssessmentId);
  const [form, setForm] = useState(nothing);
  const [lacks, setLacks] = useState<string | null>(null);
  const assessment = findAssessment(test);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const [left, right] = [parseTries(form.left, assessment), parseTries(form.right, assessment)];
    const most = assessment.most === null ? '' : `, ${assessment.most} at most`;
    const pain = form.pain.trim() === '' ? null : Number(form.pain);
    if (left === null || right === null)
      return setLacks(`Write each try as a number from 0 on${most}, with a space between: 18 20.`);
    if (left.length + right.length === 0) return setLacks('Write down a try of one leg at least.');
    if (pain !== null && !(Number.isInteger(pain) && pain >= 0 && pain <= 10))
      return setLacks('Pain is a whole number from 0 to 10.');
    if (form.by.trim() === '') return setLacks('Sign with your initials.');
    const { asDone, remark, by } = form;
    await patients.record((patient, entry) => ({
      ...patient,
      assessments: [
        ...patient.assessments,
        {
          ...entry,
          by: by.trim(),
          test,
          asDone: asDone.trim(),
          tries: { left, right },
          worstPain: pain,
          remark: remark.trim(),
          withdrawn: null,
        },
      ],
    }));
    onClose();
  };
  const field = (name: keyof typeof nothing, label: string, longest: number) => (
    <>
      <label htmlFor={`${fields}-${name}`}>{label}</label>
      <input
        id={`${fields}-${name}`}
        className="text-input"
        value={form[name]}
        maxLength={longest}
        onChange={({ target }) => setForm({ ...form, [name]: target.value })}
      />
    </>
  );
  return (
    <form className="programme-decide" onSubmit={(event) => void submit(event)}>
      <label htmlFor={`${fields}-test`}>Test</label>
      <select
        id={`${fields}-test`}
        className="text-input"
        value={test}
        onChange={({ target }) => setTest(target.value as AssessmentId)}
      >
        {assessments.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <ol className="small programme-protocol">
        {protocolSentences(assessment).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
      {field('asDone', `As done: ${assessment.protocol.fixed.join('; ')}`, longestPatientText.asDone)}
      {sides.map((side) => (
        <div key={side} className="programme-field">
          {field(side, `${capitalised(side)} leg, each try, ${unitWords(assessment.unit)}`, 200)}
        </div>
      ))}
      {field('pain', 'Worst pain during it, 0 to 10', 2)}
      {field('remark', 'Remark', longestPatientText.remark)}
      {field('by', 'Your initials', longestPatientText.by)}
      {lacks !== null && <p role="alert">{lacks}</p>}
      <div className="button-row">
        <Button className="button button-primary" type="submit">
          Keep the test
        </Button>
        <Button className="button" onPress={onClose}>
          Cancel
        </Button>
      </div>
    </form>
  );
}

/** A grade is entered as its place in the list, and the list stands beside it. */
function unitWords(unit: ReturnType<typeof findAssessment>['unit']): string {
  return unit === 'grade' ? effusionGrades.map((grade, at) => `${at} = ${grade}`).join(', ') : unit;
}
