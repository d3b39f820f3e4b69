import { useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { KeyWords } from '#ui/components/KeyWords';
import { PassphraseField } from '#ui/components/PassphraseField';
import { passphraseHint } from '#ui/components/passphraseHint';
import { useClinic, useClinicState } from '../clinicContext';

/** The key that sent sessions are sealed for: made here, backed up, restored from a backup. */
export function KeyButton() {
  return (
    <HeadDialog name="Key" title="The key for sent sessions">
      <KeyFields />
    </HeadDialog>
  );
}

function KeyFields() {
  const clinic = useClinic();
  const recipient = useClinicState((state) => state.recipient);
  const earlierKeys = useClinicState((state) => state.earlierKeys);
  const sentence = useClinicState((state) => state.sentence);
  const [passphrase, setPassphrase] = useState('');
  return (
    <>
      {recipient === null && sentence === null && (
        <p>
          There is no key on this device yet. With one, patients can send you sealed sessions: the plans that
          you write carry its public half, and only this device can open what they send.
        </p>
      )}
      {recipient !== null && (
        <>
          <p>
            The plans that you write here carry its public half, and sessions come back sealed for it. If this
            device is lost and there is no backup of the key, sent sessions can no longer be opened.
          </p>
          <p className="small soft">{recipient}</p>
          <p>
            Its words: <KeyWords of={recipient} />. Patients see the same ones with the plan and where they
            send.
          </p>
          {earlierKeys > 0 && (
            <p className="small soft">Earlier keys that still open sessions: {earlierKeys}.</p>
          )}
        </>
      )}
      <Button className="button" onPress={() => void clinic.makeKey()}>
        {recipient === null ? 'Make a key' : 'Make a new key'}
      </Button>
      <PassphraseField
        label="Passphrase of the backup"
        hint={passphraseHint}
        value={passphrase}
        onChange={setPassphrase}
      />
      <div className="button-row">
        <Button
          className="button"
          isDisabled={recipient === null || passphrase === ''}
          onPress={() => void clinic.backUp(passphrase)}
        >
          Save a backup
        </Button>
        <FileTrigger
          acceptedFileTypes={['.age']}
          onSelect={(files) => {
            const file = files?.[0];
            if (file !== undefined) void clinic.restore(file, passphrase);
          }}
        >
          <Button className="button" isDisabled={passphrase === ''}>
            Restore it from a backup
          </Button>
        </FileTrigger>
      </div>
      <ErrorLine sentence={sentence} />
    </>
  );
}
