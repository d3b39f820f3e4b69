import { useEffect, useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { NewPassphrase, nothingTyped } from '#ui/components/NewPassphrase';
import { ProgressFill } from '#ui/components/ProgressFill';
import { dayWords } from '#words/dateWords';
import { useBackup, useBackupState } from '../backupContext';
import type { BackupContents, SavedContents } from '../store/backup/packBackup';

/** One sealed file of everything: saved, opened, restored. */
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
  useEffect(() => void backup.look(), [backup]);
  return (
    <>
      <LastBackup />
      <p>
        One file with all patients, sessions, videos, plans, drafts and keys of this device, sealed by a
        passphrase. Store it somewhere other than this device, and keep the passphrase apart from the file. An
        interrupted set that you have not yet kept or deleted is not included.
      </p>
      <NewPassphrase
        label="Passphrase of the backup"
        repeatLabel="Once more, to save a backup"
        value={typed}
        onChange={setTyped}
      />
      <div className="button-row">
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
        {saved !== null && savedWords(saved)}
        {state === 'restored' && 'Restored.'}
      </p>
    </>
  );
}

function LastBackup() {
  const last = useBackupState((backup) => backup.last);
  if (last === null) return null;
  return (
    <p>
      {last.at === null
        ? 'No backup has been saved from this device yet.'
        : `The last backup was saved from this device on ${dayWords(last.at)}.`}
    </p>
  );
}

function savedWords({ unreadable, ...contents }: SavedContents): string {
  const saved = `Saved: ${contentsWords(contents)}.`;
  if (unreadable === 0) return saved;
  const left = unreadable === 1 ? 'One record' : `${unreadable} records`;
  return `${saved} ${left} can’t be read, and ${unreadable === 1 ? 'is' : 'are'} not in it.`;
}

const workWords = {
  saving: 'Reading and sealing everything',
  checking: 'Opening and checking the backup',
  restoring: 'Restoring the backup',
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
          Cancel
        </Button>
      )}
    </>
  );
}

function Found() {
  const backup = useBackup();
  const found = useBackupState((backup) => backup.found);
  if (found === null) return null;
  const { createdAt, contents, missing, different, workedOn } = found;
  return (
    <>
      <p>
        A backup from {dayWords(createdAt)}: {contentsWords(contents)}. It was checked in full, and nothing
        has been written yet.
      </p>
      <p>
        {missing === 0
          ? 'Nothing in it is missing from this device'
          : `${missing} of these records are missing from this device`}
        {different > 0 && `, and ${different} differ from the version here`}. Anything kept here that is not
        in the backup stays.
      </p>
      {workedOn > 0 && (
        <p>
          {workedOn === 1 ? 'One of these was' : `${workedOn} of these were`} reviewed or corrected on this
          device. Replacing puts the backup’s version in place of that work.
        </p>
      )}
      <div className="button-row">
        <Button className="button button-primary" onPress={() => void backup.restore(false)}>
          Restore what is missing
        </Button>
        {different > 0 && (
          <Button className="button" onPress={() => void backup.restore(true)}>
            Replace the other versions too
          </Button>
        )}
        <Button className="button button-quiet" onPress={() => backup.cancel()}>
          Leave everything as it is
        </Button>
      </div>
    </>
  );
}

function contentsWords({ patients, sessions, recordings, plans, videos }: BackupContents): string {
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`;
  return [
    count(patients, 'patient'),
    count(sessions, 'session'),
    count(recordings, 'set'),
    count(videos, 'video'),
    count(plans, 'plan'),
  ].join(', ');
}
