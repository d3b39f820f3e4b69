import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { Choice } from '#ui/components/Choice';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { NewPassphrase, nothingTyped } from '#ui/components/NewPassphrase';
import { PassphraseField } from '#ui/components/PassphraseField';
import { useLockSettings, useLockSettingsState } from '../lockContext';
import { idleChoices } from '../store/createIdleLock';

/** The passphrase lock of what is kept on this device: on, off, and change of passphrase. */
export function LockButton() {
  return (
    <HeadDialog name="Lock" title="Passphrase lock of this device">
      <Settings />
    </HeadDialog>
  );
}

function Settings() {
  const lock = useLockSettings();
  const isOn = useLockSettingsState((state) => state.isOn);
  const sentence = useLockSettingsState((state) => state.sentence);
  const undone = useLockSettingsState((state) => state.undone);
  const leavesNothing = useLockSettingsState((state) => state.leavesNothing);
  useEffect(() => void lock.look(), [lock]);
  return (
    <>
      <ErrorLine sentence={undone} />
      {isOn === true && (
        <>
          <p>
            On: sessions, videos, plans and keys are sealed on this device. You are asked for the passphrase
            whenever the page is opened.
          </p>
          <On />
        </>
      )}
      {isOn === false && (
        <>
          <p>
            Off: anyone who can use this browser can read what is kept here. With a lock, it is sealed on this
            device, and you are asked for the passphrase whenever the page is opened.
          </p>
          <p>
            <strong>Save a backup first.</strong> Nobody can recover a lost passphrase.
          </p>
          {!leavesNothing && <Remains />}
          <Off />
        </>
      )}
      <ErrorLine sentence={sentence} />
    </>
  );
}

/** What a lock can't do where the browser has no storage buckets. */
function Remains() {
  return (
    <p>
      <strong>What was kept here before is not erased.</strong> This browser only marks it as deleted, so
      somebody with this disk and the right tools may still find it, the key for sent sessions included. To be
      safe, save a backup, start with an empty, locked device, and only then restore the backup. Make a new
      key afterwards, for plans from then on.
    </p>
  );
}

function Off() {
  const lock = useLockSettings();
  const leavesNothing = useLockSettingsState((state) => state.leavesNothing);
  const isWorking = useLockSettingsState((state) => state.isWorking);
  const [typed, setTyped] = useState(nothingTyped);
  return (
    <>
      <NewPassphrase
        label="Passphrase of the lock"
        repeatLabel="Once more"
        value={typed}
        onChange={setTyped}
      />
      <Button
        className="button"
        isDisabled={isWorking || typed.passphrase === ''}
        onPress={() => void lock.turnOn(typed, false)}
      >
        Lock this device
      </Button>
      {!leavesNothing && (
        <Button
          className="button button-delete"
          isDisabled={isWorking || typed.passphrase === ''}
          onPress={() => void lock.turnOn(typed, true)}
        >
          Delete everything here and start with an empty, locked device
        </Button>
      )}
    </>
  );
}

function On() {
  const lock = useLockSettings();
  const isWorking = useLockSettingsState((state) => state.isWorking);
  const [passphrase, setPassphrase] = useState('');
  const [next, setNext] = useState(nothingTyped);
  return (
    <>
      <Button className="button" onPress={() => lock.lockNow()}>
        Lock now
      </Button>
      <IdleTime />
      <PassphraseField label="Passphrase of the lock" value={passphrase} onChange={setPassphrase} />
      <Button
        className="button"
        isDisabled={isWorking || passphrase === ''}
        onPress={() => void lock.turnOff(passphrase)}
      >
        Turn off the lock
      </Button>
      <NewPassphrase
        label="New passphrase"
        repeatLabel="New passphrase once more"
        value={next}
        onChange={setNext}
      />
      <Button
        className="button"
        isDisabled={isWorking || passphrase === '' || next.passphrase === ''}
        onPress={() => void lock.change(passphrase, next.passphrase, next.repeated)}
      >
        Change the passphrase
      </Button>
    </>
  );
}

/** After how long without a touch the device locks itself. */
function IdleTime() {
  const lock = useLockSettings();
  const minutes = useLockSettingsState((state) => state.idleMinutes);
  return (
    <Choice
      label="Lock by itself when nothing is done for"
      options={idleOptions}
      value={String(minutes)}
      onChange={(id) => void lock.setIdleMinutes(idleChoices.find((choice) => String(choice) === id)!)}
    />
  );
}

const idleOptions = idleChoices.map((minutes) => ({
  id: String(minutes),
  name: minutes === 0 ? 'any time: never lock by itself' : `${minutes} minutes`,
}));
