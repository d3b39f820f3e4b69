import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { useLockSettings, useLockSettingsState } from '../lockContext';
import { PassphraseField } from '#ui/components/PassphraseField';
import { HeadDialog } from '#ui/components/HeadDialog';
import { passphraseHint } from '#ui/components/passphraseHint';

/** The passphrase lock of what is kept on this device: on, off, and with another passphrase. */
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
            On: sessions, videos, plans and keys are sealed on this device. The passphrase is asked for
            whenever the page is opened.
          </p>
          <On />
        </>
      )}
      {isOn === false && (
        <>
          <p>
            Off: whoever can use this browser can read what is kept. With a lock, it is sealed on this device,
            and the passphrase is asked for whenever the page is opened.
          </p>
          <p>
            <strong>Save a backup first.</strong> Nobody can recover a lost passphrase.
          </p>
          <Off />
        </>
      )}
      {sentence !== null && (
        <p className="field-error" role="alert">
          {sentence}
        </p>
      )}
    </>
  );
}

function Off() {
  const lock = useLockSettings();
  const isWorking = useLockSettingsState((state) => state.isWorking);
  const [passphrase, setPassphrase] = useState('');
  const [repeated, setRepeated] = useState('');
  return (
    <>
      <PassphraseField
        label="Passphrase of the lock"
        hint={passphraseHint}
        value={passphrase}
        onChange={setPassphrase}
      />
      <PassphraseField label="The same again" value={repeated} onChange={setRepeated} />
      <Button
        className="button"
        isDisabled={isWorking || passphrase === ''}
        onPress={() => void lock.turnOn(passphrase, repeated)}
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
  const [next, setNext] = useState('');
  const [repeated, setRepeated] = useState('');
  return (
    <>
      <Button className="button" onPress={() => lock.lockNow()}>
        Ask for it now
      </Button>
      <PassphraseField label="Passphrase of the lock" value={passphrase} onChange={setPassphrase} />
      <Button
        className="button"
        isDisabled={isWorking || passphrase === ''}
        onPress={() => void lock.turnOff(passphrase)}
      >
        Take the lock off
      </Button>
      <PassphraseField label="Another passphrase" hint={passphraseHint} value={next} onChange={setNext} />
      <PassphraseField label="The other one again" value={repeated} onChange={setRepeated} />
      <Button
        className="button"
        isDisabled={isWorking || passphrase === '' || next === ''}
        onPress={() => void lock.change(passphrase, next, repeated)}
      >
        Change the passphrase
      </Button>
    </>
  );
}
