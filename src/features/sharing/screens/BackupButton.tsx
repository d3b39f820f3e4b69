import { useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { useBackup, useBackupState } from '../backupContext';
import type { BackupContents } from '../store/backup/packBackup';
import { ErrorLine } from '#ui/components/ErrorLine';
import { ProgressFill } from '#ui/components/ProgressFill';
import { HeadDialog } from '#ui/components/HeadDialog';
import { NewPassphrase, nothingTyped } from '#ui/components/NewPassphrase';

/** One sealed file of everything: saved, opened, brought back. */
export function BackupButton() {
  return (
    <HeadDialog name="Backup" title="Backup of everything">
      <Contents />
    </HeadDialog>
  );
}

function Contents() {
  const state = useBackupState((backup) => backup.state);
  const sentence = useBackupState((backup) => backup.sentence);
  return (
    <>
      {state === 'saving' || state === 'checking' || state === 'restoring' ? (
        <Work state={state} />
      ) : state === 'asks' ? (
        <Found />
      ) : (
        <Ways />
      )}
      <ErrorLine sentence={sentence} />
    </>
  );
}

function Ways() {
  const backup = useBackup();
  const state = useBackupState((backup) => backup.state);
  const saved = useBackupState((backup) => backup.saved);
  const [typed, setTyped] = useState(nothingTyped);
  const { passphrase, repeated } = typed;
  return (
    <>
      <p>
        One file with all sessions, videos, plans, drafts and keys of this device, sealed by a passphrase.
        Keep it in another place than this device, and the passphrase in another place than the file. A set
        that was broken off and neither kept nor dropped yet is not in it.
      </p>
      <NewPassphrase
        label="Passphrase of the backup"
        repeatLabel="The same again, to save one"
        value={typed}
        onChange={setTyped}
      />
      <div className="inbox-sent-ways">
        <Button
          className="button"
          isDisabled={passphrase === '' || repeated === ''}
          onPress={() => void backup.save(passphrase, repeated)}
        >
          Save a backup of everything
        </Button>
        <FileTrigger
          acceptedFileTypes={['.age']}
          onSelect={(files) => {
            const file = files?.[0];
            if (file !== undefined) void backup.open(file, passphrase);
          }}
        >
          <Button className="button" isDisabled={passphrase === ''}>
            Open a backup
          </Button>
        </FileTrigger>
      </div>
      <p role="status">
        {saved !== null && `Saved: ${contentsWords(saved)}.`}
        {state === 'restored' && 'Brought back.'}
      </p>
    </>
  );
}

const workWords = {
  saving: 'Everything is read and sealed',
  checking: 'The backup is opened and checked',
  restoring: 'The backup is brought back',
};

function Work({ state }: { state: keyof typeof workWords }) {
  const backup = useBackup();
  const progress = useBackupState((backup) => backup.progress);
  const { done, total } = progress ?? { done: 0, total: 0 };
  return (
    <>
      <p role="status">
        {workWords[state]}
        {total > 0 && `, ${done} of ${total} done`} …
      </p>
      <ProgressFill percentage={total === 0 ? undefined : (100 * done) / total} />
      {state !== 'restoring' && (
        <Button className="button button-quiet" onPress={() => backup.cancel()}>
          Call it off
        </Button>
      )}
    </>
  );
}

function Found() {
  const backup = useBackup();
  const found = useBackupState((backup) => backup.found);
  if (found === null) return null;
  const { createdAt, contents, missing, different } = found;
  return (
    <>
      <p>
        A backup of {createdAt.slice(0, 10)}: {contentsWords(contents)}. All of it was checked, and nothing is
        written yet.
      </p>
      <p>
        {missing === 0
          ? 'Nothing of it is missing on this device'
          : `${missing} of these records are missing on this device`}
        {different > 0 && `, and ${different} stand here in another version`}. What is kept here and not in
        the backup stays.
      </p>
      <div className="inbox-sent-ways">
        <Button className="button button-primary" onPress={() => void backup.restore(false)}>
          Bring back what is missing
        </Button>
        {different > 0 && (
          <Button className="button" onPress={() => void backup.restore(true)}>
            Replace the other versions too
          </Button>
        )}
        <Button className="button button-quiet" onPress={() => backup.cancel()}>
          Leave all as it is
        </Button>
      </div>
    </>
  );
}

function contentsWords({ sessions, recordings, plans, videos }: BackupContents): string {
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`;
  return [
    count(sessions, 'session'),
    count(recordings, 'set'),
    count(videos, 'video'),
    count(plans, 'plan'),
  ].join(', ');
}
