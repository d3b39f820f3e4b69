import { Button } from 'react-aria-components';
import { planBounds } from '#documents/plan/planRanges';
import { useClinic, useClinicState } from '#features/sharing/clinicContext';
import { usePeopleState } from '#features/sharing/peopleContext';
import { KeyWords } from '#ui/components/KeyWords';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { Tick } from './Tick';

/** Whether the patient can send sessions back, and for whom they are sealed: this device, and chosen colleagues. */
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
      <Tick isSelected={isOwn} onChange={(isSelected) => void choose(isSelected)}>
        The patient can send sessions back, sealed for this device
      </Tick>
      {isOwn && <ForColleagues own={recipient} returnKeys={returnKeys} />}
      {returnKeys.length > 0 && (
        <p>
          {returnKeys.length === 1 ? 'The key’s words: ' : 'The words of each key: '}
          <KeyWords of={returnKeys} />. They are on the patient’s sheet and screen as well.
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

/** Colleagues on whose devices it opens too, and keys of the plan that are nobody's in the list. */
function ForColleagues({ own, returnKeys }: { own: string; returnKeys: readonly string[] }) {
  const writing = usePlanWriting();
  const colleagues = usePeopleState((state) => state.colleagues);
  const takenOut = usePeopleState((state) => state.takenOut);
  const unknown = returnKeys.filter((key) => key !== own && !colleagues.some((one) => one.key === key));
  const isFull = returnKeys.length >= planBounds.returnKeys;
  const without = (key: string) => returnKeys.filter((one) => one !== key);
  const choose = (key: string, isSelected: boolean) => {
    if (!isSelected) writing.change({ returnKeys: without(key) });
    else if (!isFull) writing.change({ returnKeys: [...without(key), key] });
  };
  return (
    <>
      {colleagues.map(({ initials, key }) => (
        <Tick
          key={key}
          isSelected={returnKeys.includes(key)}
          onChange={(isSelected) => choose(key, isSelected)}
        >
          It opens for {initials} too
        </Tick>
      ))}
      {isFull && (
        <p role="status">
          A plan carries {planBounds.returnKeys} keys at most, yours and four of colleagues. To choose another
          colleague, leave one of these out first.
        </p>
      )}
      {unknown.map((key) => {
        const gone = takenOut.find((one) => one.key === key);
        return (
          <div key={key} className="message">
            <p>
              {gone === undefined
                ? 'This plan has a key that is not in your list'
                : `${gone.initials} was taken out of your list, and this plan still has their key`}
              : <KeyWords of={key} />.
            </p>
            <Button className="button" onPress={() => choose(key, false)}>
              Leave it out
            </Button>
          </div>
        );
      })}
    </>
  );
}
