import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import {
  areSameThresholds,
  thresholdFacts,
  thresholdIds,
  type ThresholdId,
} from '#core/programme/proposalThresholds';
import type { PlanDocument } from '#documents/plan/planDocument';
import { usePatients, usePatientsState } from '../patientsContext';

/** Where the rules draw their lines for this patient; each says where it is from. */
export function Thresholds({ plan }: { plan: PlanDocument }) {
  const patients = usePatients();
  const own = usePatientsState((state) => state.patient?.thresholds) ?? {};
  const changed = Object.keys(own).length;
  return (
    <details className="programme-thresholds">
      <summary>Where the rules draw their lines{changed > 0 && ` (${changed} set for this patient)`}</summary>
      <AtHome isOther={plan.autoStep === 'within-plan' && !areSameThresholds(plan.thresholds, own)} />
      <div className="programme-lines small">
        {thresholdIds.map((id) => (
          <Line key={`${id} ${own[id] ?? ''}`} id={id} own={own[id]} />
        ))}
      </div>
      {changed > 0 && (
        <Button
          className="button"
          onPress={() =>
            void patients.record((patient, { at }) => ({ ...patient, thresholds: {}, changedAt: at }))
          }
        >
          All as usual
        </Button>
      )}
    </details>
  );
}

/** @param isOther  whether the device at home draws other lines than these */
function AtHome({ isOther }: { isOther: boolean }) {
  return (
    <p className="small soft">
      {isOther
        ? 'The plan in force has other lines: at home they hold until the next plan is handed out.'
        : 'They go with each plan that lets the patient’s device change something by itself.'}
    </p>
  );
}

function Line({ id, own }: { id: ThresholdId; own: number | undefined }) {
  const patients = usePatients();
  const field = useId();
  const { usual, min, max, isWhole, meaning, source } = thresholdFacts[id];
  const shown = own ?? usual;
  const [text, setText] = useState(String(Number(shown.toFixed(2))));
  const [isWrong, setWrong] = useState(false);
  const keep = () => {
    const value = Number(text.replace(',', '.'));
    const isOff =
      text.trim() === '' ||
      !Number.isFinite(value) ||
      value < min ||
      value > max ||
      (isWhole && !Number.isInteger(value));
    setWrong(isOff);
    if (isOff || value === Number(shown.toFixed(2))) return;
    void patients.record((patient, { at }) => {
      const { [id]: before, ...others } = patient.thresholds;
      return { ...patient, thresholds: value === usual ? others : { ...others, [id]: value }, changedAt: at };
    });
  };
  return (
    <div className="programme-line">
      <input
        id={field}
        className="text-input number"
        inputMode="decimal"
        value={text}
        aria-invalid={isWrong}
        onChange={(event) => setText(event.target.value)}
        onBlur={keep}
      />
      <label htmlFor={field}>
        {meaning}{' '}
        <span className="soft">
          Usually {Number(usual.toFixed(2))}; {source}.
        </span>
        {isWrong && (
          <strong role="alert">
            {' '}
            {isWhole ? 'A whole number' : 'A number'} from {min} to {max}, please.
          </strong>
        )}
      </label>
    </div>
  );
}
