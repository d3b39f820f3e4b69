import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { NewPassphrase, nothingTyped } from '#ui/components/NewPassphrase';
import { PassphraseField } from '#ui/components/PassphraseField';
import { useLockSettings, useLockSettingsState } from '../lockContext';

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
  useEffect(() => void lock.look(), [lock]);
  return (
    <>
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
          <Off />
        </>
      )}
      <ErrorLine sentence={sentence} />
    </>
  );
}

function Off() {
  const lock = useLockSettings();
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
        onPress={() => void lock.turnOn(typed.passphrase, typed.repeated)}
      >
        Lock this device
      </Button>
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
