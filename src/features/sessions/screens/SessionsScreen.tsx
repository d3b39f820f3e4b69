import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import { useNavigation } from '#shell/navigation/navigationContext';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { useMediaQuery } from '#ui/components/useMediaQuery';
import { useKeptSessions, useKeptSessionsState } from '../keptSessionsContext';
import { groupByPatient } from '../rules/groupByPatient';
import './sessions.css';
import './setList.css';
import { LockButton } from '#features/lock/screens/LockButton';
import { LockTrouble } from '#features/lock/screens/LockTrouble';
import { BackupButton } from '#features/sharing/screens/BackupButton';
import { KeyButton } from '#features/sharing/screens/KeyButton';
import { DeviceButton } from './DeviceButton';
import { Removals } from './Removals';
import { SentFiles } from './SentFiles';
import { SessionDetail } from './SessionDetail';
import { SessionList } from './SessionList';
import { StorageMessage } from './StorageMessage';
import { UnreadableRecords } from './UnreadableRecords';

/** The sessions kept on this device, by patient, with what needs a look in each. */
export function SessionsScreen() {
  const navigation = useNavigation();
  const keptSessions = useKeptSessions();
  const problem = useKeptSessionsState((state) => state.problem);
  useEffect(() => {
    void keptSessions.enter();
    return () => keptSessions.leave();
  }, [keptSessions]);
  return (
    <div className="sessions">
      <header className="sessions-head">
        <Brand />
        <h1>Kept sessions</h1>
        <Button className="button button-quiet" onPress={() => void navigation.show('mirror')}>
          Live mirror
        </Button>
        <DeviceButton />
        <BackupButton />
        <LockButton />
        <KeyButton />
        <Button className="button button-quiet" onPress={() => navigation.returnTo('start')}>
          Back to the start
        </Button>
      </header>
      <div className="sessions-messages">
        <StorageMessage />
        <LockTrouble />
        <ProblemMessage problem={problem} onClose={() => keptSessions.dismissProblem()} />
      </div>
      <SentFiles />
      <Sessions />
      <Removals />
    </div>
  );
}

/** List and session side by side, or one at a time where there is no room for both. */
function Sessions() {
  const keptSessions = useKeptSessions();
  const isNarrow = useMediaQuery('(width < 60rem)');
  const all = useKeptSessionsState((state) => state.sessions);
  const removals = useKeptSessionsState((state) => state.removals);
  const selected = useKeptSessionsState((state) => state.selected);
  const isBlocked = useKeptSessionsState((state) => state.storage.state === 'blocked');
  const hasUnreadable = useKeptSessionsState((state) => state.unreadable.length > 0);
  if (all === null)
    return isBlocked ? null : <p className="soft sessions-empty">Looking for kept sessions …</p>;
  const going = new Set(removals.flatMap(({ records }) => records.map(({ id }) => id)));
  const sessions = all.filter(({ id }) => !going.has(id));
  const chosen = sessions.find(({ id }) => id === selected);
  const shown = chosen ?? (isNarrow ? undefined : groupByPatient(sessions)[0]?.sessions[0]);
  if (sessions.length === 0 && !hasUnreadable) return <Empty />;
  return (
    <main className="sessions-main">
      {(!isNarrow || shown === undefined) && (
        <div className="sessions-left">
          <SessionList sessions={sessions} selected={shown?.id ?? null} onSelect={keptSessions.select} />
          <UnreadableRecords />
        </div>
      )}
      {shown !== undefined && (
        <div className="sessions-right">
          {isNarrow && (
            <Button className="button button-quiet" onPress={() => keptSessions.select(null)}>
              ‹ All sessions
            </Button>
          )}
          <SessionDetail key={shown.id} session={shown} />
        </div>
      )}
    </main>
  );
}

function Empty() {
  return (
    <main className="card sessions-empty">
      <h2>Nothing is kept on this device yet</h2>
      <p>
        A session done on this device, at home or in the clinic, appears here once its first set is done.
        Recordings saved as files can be opened from the start screen.
      </p>
    </main>
  );
}
