import { useState } from 'react';
import { findAssessment } from '#core/assessments/assessments';
import { scoreTries } from '#core/assessments/scoreTries';
import { sides, type Side } from '#core/protocol/side';
import { longestPatientText } from '#documents/patient/patientDocument';
import { protocolSentences, reachSentence } from '#words/assessmentSentences';
import { capitalised } from '#words/capitalised';
import { usePatients } from '../patientsContext';
import { painLack, parseTries } from '../rules/assessmentResults';
import { legLength, reachDirections, shareOfLeg } from '../rules/reachResults';
import { EntryForm } from './EntryForm';
import { LineField } from './LineField';

const parts = [{ test: legLength, name: 'Length of the leg' }, ...reachDirections] as const;
type Part = (typeof parts)[number]['test'];
const nothing = { left: '', right: '' };

/** Writes down the balance reach in three directions, both legs, with the length of the leg. */
export function ReachForm({ onClose }: { onClose: () => void }) {
  const patients = usePatients();
  const [form, setForm] = useState<Record<Part, Record<Side, string>>>({
    'leg-length': nothing,
    'reach-front': nothing,
    'reach-back-inward': nothing,
    'reach-back-outward': nothing,
  });
  const [asDone, setAsDone] = useState('');
  const [pain, setPain] = useState('');
  const triesOf = (test: Part, side: Side) => parseTries(form[test][side], findAssessment(test));
  const resultOf = (test: Part, side: Side) => scoreTries(findAssessment(test), triesOf(test, side) ?? []);
  const lack = () => {
    if (parts.some(({ test }) => sides.some((side) => triesOf(test, side) === null)))
      return 'Write each try in cm as a number from 0 on, with a space between: 62 64.5 63.';
    if (!reachDirections.some(({ test }) => sides.some((side) => triesOf(test, side)!.length > 0)))
      return 'Write down a reach of one leg at least.';
    if (sides.some((side) => resultOf(legLength, side) === 0)) return 'A leg is longer than 0 cm.';
    return painLack(pain);
  };
  const keep = (by: string) =>
    patients.record((patient, { at }, newId) => ({
      ...patient,
      assessments: [
        ...patient.assessments,
        ...parts.flatMap(({ test }) => {
          const tries = { left: triesOf(test, 'left') ?? [], right: triesOf(test, 'right') ?? [] };
          if (tries.left.length + tries.right.length === 0) return [];
          const isReach = test !== legLength;
          return [
            {
              ...{ id: newId(), at, by, test, tries, withdrawn: null, remark: '' },
              asDone: isReach ? asDone.trim() : '',
              worstPain: isReach && pain.trim() !== '' ? Number(pain) : null,
            },
          ];
        }),
      ],
    }));
  return (
    <EntryForm lack={lack} answer="Keep the test" onKeep={keep} onClose={onClose}>
      <ol className="small programme-protocol">
        {[
          ...findAssessment(legLength).protocol.steps,
          ...protocolSentences(findAssessment('reach-front')),
        ].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
      <LineField
        label="As done: shoes or bare feet"
        value={asDone}
        maxLength={longestPatientText.asDone}
        onChange={setAsDone}
      />
      {sides.map((side) => {
        const ofLeg = shareOfLeg(
          reachDirections.map(({ test }) => resultOf(test, side)),
          resultOf(legLength, side),
        );
        return (
          <div key={side} className="programme-field" role="group" aria-label={`Standing on the ${side} leg`}>
            {parts.map(({ test, name }) => (
              <LineField
                key={test}
                label={`${capitalised(side)} leg, ${name.toLowerCase()}, each try, cm`}
                value={form[test][side]}
                maxLength={200}
                onChange={(tries) => setForm({ ...form, [test]: { ...form[test], [side]: tries } })}
              />
            ))}
            {ofLeg !== null && (
              <p className="small programme-wide" role="status">
                {reachSentence(ofLeg)}
              </p>
            )}
          </div>
        );
      })}
      <LineField
        label="Worst pain during it, 0 to 10"
        value={pain}
        maxLength={2}
        inputMode="numeric"
        onChange={setPain}
      />
    </EntryForm>
  );
}
