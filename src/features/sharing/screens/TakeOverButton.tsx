import { Button, FileTrigger } from 'react-aria-components';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { KeyWords } from '#ui/components/KeyWords';
import { dayWords } from '#words/dateWords';
import { useHandOver, useHandOverState } from '../handOverContext';
import { handedOverWords } from './handedOverWords';

/** Takes over a patient whom a colleague hands over. */
export function TakeOverButton() {
  return (
    <HeadDialog name="Take over" title="Take over a patient">
      <Taking />
    </HeadDialog>
  );
}

function Taking() {
  const handOver = useHandOver();
  const state = useHandOverState((all) => all.state);
  const found = useHandOverState((all) => all.found);
  const sentence = useHandOverState((all) => all.sentence);
  return (
    <>
      {state === 'asks' ? (
        <Found />
      ) : (
        <>
          <p>A colleague can hand a patient over to you as one file, sealed for the key of this device.</p>
          <FileTrigger
            acceptedFileTypes={['.age']}
            onSelect={(files) => {
              const file = files?.[0];
              if (file !== undefined) void handOver.open(file);
            }}
          >
            <Button className="button" isDisabled={state === 'checking' || state === 'taking'}>
              Open a colleague’s file
            </Button>
          </FileTrigger>
          <p role="status">
            {state === 'checking' && 'Opening and checking the file …'}
            {state === 'taking' && 'Taking it over …'}
            {state === 'taken' && found !== null && `${found.patient} was taken over.`}
          </p>
        </>
      )}
      <ErrorLine sentence={sentence} />
    </>
  );
}

function Found() {
  const handOver = useHandOver();
  const found = useHandOverState((all) => all.found);
  if (found === null) return null;
  const { patient, isKnown, by, signer, createdAt, contents, missing, versions, different } = found;
  const { workedOn, deleted } = found;
  return (
    <>
      <p>
        <strong>{patient}</strong>, handed over by {by} on {dayWords(createdAt)}: {handedOverWords(contents)}.
        It was checked in full, and nothing has been written yet.
      </p>
      <p>
        The device that signed it has the words <KeyWords of={signer} />. Ask {by} whether theirs are the
        same: initials can be written by anybody.
      </p>
      <p>
        {isKnown
          ? `There is a record of ${patient} on this device, and both become one. Where both of you noted something, the latest counts and the other is shown beside it. If it is somebody else, leave it.`
          : `There is no record of ${patient} on this device yet.`}{' '}
        {missing === 0
          ? 'Nothing else in it is missing here'
          : `${missing} of its sessions, sets and plans ${missing === 1 ? 'is' : 'are'} missing here`}
        {different > 0 &&
          `, and ${different} ${different === 1 ? 'set differs from its version here, which stays' : 'sets differ from their versions here, which stay'} unless you replace ${different === 1 ? 'it' : 'them'}`}
        .
      </p>
      {versions > 0 && (
        <p>
          {versions === 1 ? 'A session or plan differs' : `${versions} sessions and plans differ`} from the
          version here. Both are kept: the one that was signed last counts, or the one here where neither was
          signed. The other is shown on the patient’s page.
        </p>
      )}
      {workedOn > 0 && (
        <p>
          {workedOn === 1 ? 'One of these sets was' : `${workedOn} of these sets were`} reviewed or corrected
          on this device. Whether you replace or not, remarks and limits of both are kept, and the limits that
          were set last are in force. Corrections and cues of the version that does not count stay on the
          patient’s page, under “In another version”.
        </p>
      )}
      {deleted > 0 && (
        <p>
          {deleted === 1 ? 'One of its sessions was' : `${deleted} of its sessions were`} deleted on this
          device, and would come back.
        </p>
      )}
      <div className="button-row">
        <Button className="button button-primary" onPress={() => void handOver.take(false)}>
          Add what is missing
        </Button>
        {different > 0 && (
          <Button className="button" onPress={() => void handOver.take(true)}>
            Replace those sets too
          </Button>
        )}
        <Button className="button button-quiet" onPress={() => handOver.dismiss()}>
          Leave everything as it is
        </Button>
      </div>
    </>
  );
}
