import { useEffect } from 'react';
import { Message } from '#ui/components/Message';
import { useLockSettings, useLockSettingsState } from '../lockContext';

/** Says that the lock is not as it was asked for; nothing where it is. */
export function LockTrouble() {
  const lock = useLockSettings();
  const undone = useLockSettingsState((state) => state.undone);
  useEffect(() => void lock.look(), [lock]);
  if (undone === null) return null;
  return (
    <Message kind="problem" title="The lock could not be changed">
      {undone}
    </Message>
  );
}
