import { useState, type FormEvent } from 'react';
import { Button } from 'react-aria-components';
import { useStore } from 'zustand';
import { Brand } from '#ui/components/Brand';
import { ErrorLine } from '#ui/components/ErrorLine';
import { PassphraseField } from '#ui/components/PassphraseField';
import { ProgressFill } from '#ui/components/ProgressFill';
import type { Gate } from '../store/createGate';
import './lock.css';

/** Asks for the passphrase while what is kept on this device is locked. */
export function LockScreen({ gate }: { gate: Gate }) {
  const { state, isDamaged, progress, sentence } = useStore(gate.store);
  const [passphrase, setPassphrase] = useState('');
  const isTrying = state === 'trying';
  const unlock = (event: FormEvent) => {
    event.preventDefault();
    void gate.unlock(passphrase);
  };
  return (
    <div className="lock">
      <header className="page-head">
        <Brand />
      </header>
      <main className="card lock-card">
        <h1>{isDamaged ? 'The lock of this device is damaged' : 'What is kept on this device is locked'}</h1>
        {isDamaged ? (
          <Damaged sentence={sentence} />
        ) : (
          <form className="lock-form" onSubmit={unlock}>
            <PassphraseField label="Passphrase" value={passphrase} onChange={setPassphrase} autoFocus />
            <ErrorLine sentence={sentence} />
            <Button
              className="button button-primary"
              type="submit"
              isDisabled={isTrying || passphrase === ''}
            >
              {isTrying ? 'Unlocking …' : 'Unlock'}
            </Button>
          </form>
        )}
        {progress !== null && <Work {...progress} />}
        {!isTrying && (isDamaged ? <Erase gate={gate} /> : <Lost gate={gate} />)}
      </main>
    </div>
  );
}

function Work({ done, total }: { done: number; total: number }) {
  return (
    <div role="status">
      <p>
        The lock was changed: everything kept is being rewritten, {done} of {total} done. Keep this page open
        until it has finished; if you close it, it continues next time.
      </p>
      <ProgressFill percentage={(100 * done) / total} />
    </div>
  );
}

/** The one way on without the passphrase. */
function Lost({ gate }: { gate: Gate }) {
  return (
    <details className="lock-lost">
      <summary>The passphrase is lost</summary>
      <p>
        Nobody can recover it. You can delete everything kept here and restore it from a full backup, if there
        is one. Sessions that patients still have on their devices can be sent again; without a backup of the
        key, they need a new plan first.
      </p>
      <Erase gate={gate} />
    </details>
  );
}

/** What to do where no passphrase helps. */
function Damaged({ sentence }: { sentence: string | null }) {
  return (
    <>
      <p>
        No passphrase opens what is kept here. Delete everything, then restore it from a full backup: ‘Kept
        sessions’, ‘Backup’. To look for help first, leave everything as it is and close this page.
      </p>
      <ErrorLine sentence={sentence} />
    </>
  );
}

function Erase({ gate }: { gate: Gate }) {
  const [isSure, setSure] = useState(false);
  return isSure ? (
    <Button className="button button-delete" onPress={() => void gate.eraseAll()}>
      Yes, delete everything for good
    </Button>
  ) : (
    <Button className="button" onPress={() => setSure(true)}>
      Delete everything …
    </Button>
  );
}
