import { useId, useState, type FormEvent } from 'react';
import { Button } from 'react-aria-components';
import { longestCaseText } from '#documents/patient/caseEntries';
import { longestPatientText } from '#documents/patient/patientDocument';
import { restrictionWords, untilWords } from '#documents/patient/restrictionWords';
import { useInitials } from '#features/sharing/screens/useInitials';
import { Message } from '#ui/components/Message';
import { capitalised } from '#words/capitalised';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { uncheckedSentence, type Refusal } from '../rules/refusals';

/** What a surgeon or doctor allows, and each task beyond it, until it is changed or signed over. */
export function Restrictions() {
  const restrictions = usePlanWritingState((state) => state.restrictions);
  const refusals = usePlanWritingState((state) => state.refusals);
  const freeItems = usePlanWritingState(({ draft }) => draft.freeItems);
  if (restrictions.length === 0) return null;
  const unchecked = uncheckedSentence(freeItems, restrictions);
  return (
    <section aria-labelledby="restrictions-title">
      <h3 id="restrictions-title">Restrictions</h3>
      <ul className="small">
        {restrictions.map((restriction) => (
          <li key={restriction.id}>
            {capitalised(restriction.setBy)}: {restrictionWords(restriction)}, {untilWords(restriction.until)}
            .
          </li>
        ))}
      </ul>
      {unchecked !== null && <p className="small">{unchecked}</p>}
      {refusals.map((refusal) => (
        <SignOver key={`${refusal.restriction.id} ${refusal.sentence}`} refusal={refusal} />
      ))}
    </section>
  );
}

function SignOver({ refusal }: { refusal: Refusal }) {
  const writing = usePlanWriting();
  const fields = useId();
  const [why, setWhy] = useState('');
  const { by, setBy, remember } = useInitials();
  const [lacks, setLacks] = useState<string | null>(null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (why.trim() === '') return setLacks('Say in a line why it may go beyond the restriction.');
    if (by.trim() === '') return setLacks('Sign with your initials.');
    remember(by);
    void writing.signOver(refusal, by.trim(), why.trim());
  };
  return (
    <Message kind="caution" title="Beyond a restriction">
      <form className="plan-sign-over" onSubmit={submit}>
        <p>{refusal.sentence} Change the task, or sign over it.</p>
        <label htmlFor={`${fields}-why`}>Why it may all the same, in a line</label>
        <input
          id={`${fields}-why`}
          className="text-input"
          value={why}
          maxLength={longestCaseText.why}
          onChange={({ target }) => setWhy(target.value)}
        />
        <label htmlFor={`${fields}-by`}>Your initials</label>
        <input
          id={`${fields}-by`}
          className="text-input"
          value={by}
          maxLength={longestPatientText.by}
          onChange={({ target }) => setBy(target.value)}
        />
        {lacks !== null && <p role="alert">{lacks}</p>}
        <Button type="submit" className="button">
          Sign over it
        </Button>
      </form>
    </Message>
  );
}
