import { Fragment, useState } from 'react';
import { assessments, findAssessment, type AssessmentId } from '#core/assessments/assessments';
import { effusionGrades } from '#core/assessments/effusion';
import { sides, type Side } from '#core/protocol/side';
import { longestPatientText } from '#documents/patient/patientDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { protocolSentences, resultWords } from '#words/assessmentSentences';
import { capitalised } from '#words/capitalised';
import { usePatients } from '../patientsContext';
import { painLack, parseTries } from '../rules/assessmentResults';
import { isOfReach, legLength } from '../rules/reachResults';
import { cameraTests } from '../store/readCameraCount';
import { EntryField } from './EntryField';
import { EntryForm } from './EntryForm';
import { LineField } from './LineField';
import { RateStepDown } from './RateStepDown';
import { ReachForm } from './ReachForm';
import { TakeCount, type TakenCount } from './TakeCount';

const nothing = { asDone: '', left: '', right: '', pain: '', remark: '' };

interface Props {
  /** Of the patient; from a recorded set of theirs the count of some tests can be taken. */
  sessions: readonly ListedSession[];
  onClose: () => void;
}

/** The balance reach is written down as a whole: three directions and the length of the leg. */
const reach = 'balance-reach';
type Choice = AssessmentId | typeof reach;
const choices = assessments.flatMap(({ id, name }): { id: Choice; name: string }[] => {
  if (!isOfReach(id)) return [{ id: id as AssessmentId, name }];
  return id === legLength ? [{ id: reach, name: 'Balance reach, three directions' }] : [];
});

/** Writes down a test with both legs, as it was done by hand or as a recording has it. */
export function TestForm({ sessions, onClose }: Props) {
  const [chosen, setChosen] = useState(choices[0]!.id);
  return (
    <>
      <div className="programme-decide">
        <EntryField label="Test">
          {(field) => (
            <select
              id={field}
              className="text-input"
              value={chosen}
              onChange={({ target }) => setChosen(target.value as Choice)}
            >
              {choices.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </EntryField>
      </div>
      {chosen === reach ? (
        <ReachForm onClose={onClose} />
      ) : (
        <OneTestForm key={chosen} test={chosen} sessions={sessions} onClose={onClose} />
      )}
    </>
  );
}

function OneTestForm({ test, sessions, onClose }: Props & { test: AssessmentId }) {
  const patients = usePatients();
  const [form, setForm] = useState(nothing);
  const assessment = findAssessment(test);
  const cameraTest = cameraTests.find((id) => id === test);
  const take = (side: Side, { value, of, seatHeightCm }: TakenCount) =>
    setForm((before) => {
      const origin = `${capitalised(side)}: ${resultWords(assessment, value)} by the camera, ${of}.`;
      const rest = before.remark.replace(new RegExp(`${capitalised(side)}: .*? by the camera, [^.]*\\.`), '');
      return {
        ...before,
        [side]: String(value),
        asDone: before.asDone === '' && seatHeightCm !== null ? `seat ${seatHeightCm} cm` : before.asDone,
        remark: `${rest.trim()} ${origin}`.trim().slice(0, longestPatientText.remark),
      };
    });
  const rate = (side: Side, points: number, seen: string) =>
    setForm((before) => {
      const rest = before.remark.replace(new RegExp(`${capitalised(side)}, seen: [^.]*\\.`), '');
      const remark = `${rest.trim()} ${capitalised(side)}, seen: ${seen}.`.trim();
      return { ...before, [side]: String(points), remark: remark.slice(0, longestPatientText.remark) };
    });
  const [left, right] = [parseTries(form.left, assessment), parseTries(form.right, assessment)];
  const lack = () => {
    const most = assessment.most === null ? '' : `, ${assessment.most} at most`;
    if (left === null || right === null)
      return `Write each try as a number from 0 on${most}, with a space between: 18 20.`;
    if (left.length + right.length === 0) return 'Write down a try of one leg at least.';
    return painLack(form.pain);
  };
  const keep = (by: string) =>
    patients.record((patient, entry) => ({
      ...patient,
      assessments: [
        ...patient.assessments,
        {
          ...entry,
          by,
          test,
          asDone: form.asDone.trim(),
          tries: { left: left ?? [], right: right ?? [] },
          worstPain: form.pain.trim() === '' ? null : Number(form.pain),
          remark: form.remark.trim(),
          withdrawn: null,
        },
      ],
    }));
  const field = (name: keyof typeof nothing, label: string, longest: number) => (
    <LineField
      label={label}
      value={form[name]}
      maxLength={longest}
      onChange={(text) => setForm({ ...form, [name]: text })}
    />
  );
  return (
    <EntryForm lack={lack} answer="Keep the test" onKeep={keep} onClose={onClose}>
      <ol className="small programme-protocol">
        {protocolSentences(assessment).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
      {field('asDone', `As done: ${assessment.protocol.fixed.join('; ')}`, longestPatientText.asDone)}
      {sides.map((side) => (
        <Fragment key={side}>
          {field(side, `${capitalised(side)} leg, each try, ${unitWords(assessment.unit)}`, 200)}
          {test === 'step-down-quality' && (
            <RateStepDown side={side} onRate={(points, seen) => rate(side, points, seen)} />
          )}
          {cameraTest !== undefined && (
            <TakeCount
              key={cameraTest}
              test={cameraTest}
              side={side}
              sessions={sessions}
              onTake={(taken) => take(side, taken)}
            />
          )}
        </Fragment>
      ))}
      {field('pain', 'Worst pain during it, 0 to 10', 2)}
      {field('remark', 'Remark', longestPatientText.remark)}
    </EntryForm>
  );
}

/** A grade is entered as its place in the list, and the list stands beside it. */
function unitWords(unit: ReturnType<typeof findAssessment>['unit']): string {
  return unit === 'grade' ? effusionGrades.map((grade, at) => `${at} = ${grade}`).join(', ') : unit;
}
