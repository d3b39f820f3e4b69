import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import { useApp } from '#features/review/appContext';
import { useInbox, useInboxState } from '../sessionsContext';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { useMediaQuery } from '#ui/components/useMediaQuery';
import { groupByPatient } from '../rules/groupByPatient';
import './inbox.css';
import './setList.css';
import { BackupButton } from '#features/sharing/screens/BackupButton';
import { DeviceButton } from './DeviceButton';
import { KeyButton } from '#features/sharing/screens/KeyButton';
import { LockButton } from '#features/lock/screens/LockButton';
import { Removals } from './Removals';
import { SentFiles } from './SentFiles';
import { StorageMessage } from './StorageMessage';
import { UnreadableRecords } from './UnreadableRecords';
import { VisitDetail } from './VisitDetail';
import { VisitList } from './VisitList';

/** The sessions kept on this device, by patient, with what needs a look in each. */
export function InboxScreen() {
  const app = useApp();
  const inbox = useInbox();
  const problem = useInboxState((state) => state.problem);
  useEffect(() => {
    void inbox.enter();
    return () => inbox.leave();
  }, [inbox]);
  return (
    <div className="inbox">
      <header className="inbox-head">
        <Brand />
        <h1>Kept sessions</h1>
        <Button className="button button-quiet" onPress={() => app.show('mirror')}>
          Live mirror
        </Button>
        <DeviceButton />
        <BackupButton />
        <LockButton />
        <KeyButton />
        <Button className="button button-quiet" onPress={() => app.show('start')}>
          Back to the start
        </Button>
      </header>
      <div className="inbox-messages">
        <StorageMessage />
        <ProblemMessage problem={problem} onClose={() => inbox.dismissProblem()} />
      </div>
      <SentFiles />
      <Visits />
      <Removals />
    </div>
  );
}

/** List and visit beside each other, or where there is no room for both, one at a time. */
function Visits() {
  const inbox = useInbox();
  const isNarrow = useMediaQuery('(width < 60rem)');
  const all = useInboxState((state) => state.visits);
  const removals = useInboxState((state) => state.removals);
  const selected = useInboxState((state) => state.selected);
  const isBlocked = useInboxState((state) => state.storage.state === 'blocked');
  const hasUnreadable = useInboxState((state) => state.unreadable.length > 0);
  if (all === null) return isBlocked ? null : <p className="soft inbox-empty">Looking for kept sessions …</p>;
  const going = new Set(removals.flatMap(({ records }) => records.map(({ id }) => id)));
  const visits = all.filter(({ id }) => !going.has(id));
  const chosen = visits.find(({ id }) => id === selected);
  const shown = chosen ?? (isNarrow ? undefined : groupByPatient(visits)[0]?.visits[0]);
  if (visits.length === 0 && !hasUnreadable) return <Empty />;
  return (
    <main className="inbox-main">
      {(!isNarrow || shown === undefined) && (
        <div className="inbox-left">
          <VisitList visits={visits} selected={shown?.id ?? null} onSelect={inbox.select} />
          <UnreadableRecords />
        </div>
      )}
      {shown !== undefined && (
        <div className="inbox-right">
          {isNarrow && (
            <Button className="button button-quiet" onPress={() => inbox.select(null)}>
              ‹ All sessions
            </Button>
          )}
          <VisitDetail key={shown.id} visit={shown} />
        </div>
      )}
    </main>
  );
}

function Empty() {
  return (
    <main className="card inbox-empty">
      <h2>Nothing is kept on this device yet</h2>
      <p>
        A session that is done here at home or in the practice appears in this list once its first set is
        done. Sessions that were saved as files open from the start screen.
      </p>
    </main>
  );
}
