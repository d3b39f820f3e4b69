import { CheckboxButton, CheckboxField } from 'react-aria-components';
import { useClinic, useClinicState } from '#features/sharing/clinicContext';
import { KeyWords } from '#ui/components/KeyWords';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';

/** Whether the patient can send sessions back, sealed for the key of this device. */
export function ReturnKey() {
  const writing = usePlanWriting();
  const clinic = useClinic();
  const returnKeys = usePlanWritingState(({ draft }) => draft.returnKeys);
  const recipient = useClinicState((state) => state.recipient);
  const isOwn = recipient !== null && returnKeys.includes(recipient);
  const isOther = returnKeys.length > 0 && !isOwn;
  const choose = async (isSelected: boolean) => {
    if (isSelected && recipient === null) await clinic.makeKey();
    const own = clinic.store.getState().recipient;
    writing.change({ returnKeys: isSelected && own !== null ? [own] : [] });
  };
  return (
    <div>
      <CheckboxField isSelected={isOwn} onChange={(isSelected) => void choose(isSelected)}>
        <CheckboxButton className="plan-tick">
          <span className="plan-tick-box" aria-hidden="true">
            {isOwn ? '✓' : ''}
          </span>
          The patient can send sessions back, sealed for this device
        </CheckboxButton>
      </CheckboxField>
      {returnKeys.length > 0 && (
        <p>
          The key’s words: <KeyWords of={returnKeys} />. They are on the patient’s sheet and screen as well.
        </p>
      )}
      <p className="small soft">
        {isOther
          ? 'This plan has the key of another device: sessions sent back open only there.'
          : 'Save a backup of the key under Kept sessions: without it, sessions sent to you are lost if this device is lost.'}
      </p>
    </div>
  );
}
