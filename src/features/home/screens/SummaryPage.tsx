import { Button } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import { itemName } from '#documents/plan/itemName';
import { Message } from '#ui/components/Message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import type { HomeSet } from '../store/homeState';
import { BackgroundLine } from './BackgroundLine';
import { HomePage } from './HomePage';
import { SendBack } from './SendBack';
import { StorageNotice } from './StorageNotice';
import { ToldThing } from './ToldThing';

/** How it went, in plain words: one thing done well, one to practise, set by set. */
export function SummaryPage() {
  const home = useHome();
  const sets = useHomeState((state) => state.sets);
  const plan = useHomeState((state) => state.plan);
  const isStopped = sets.some(({ result }) => result.cutShort === 'pain');
  const shown = sets.map((set, index) => ({ set, index })).filter(({ set }) => !set.isDiscarded);
  return (
    <HomePage
      title={isStopped ? 'Stopping was the right thing to do' : 'Well done. This is how it went'}
      leave={{ words: 'Another session', onPress: () => home.startOver() }}
      actions={
        <Button className="button button-primary" onPress={() => home.leave()}>
          Done for today
        </Button>
      }
    >
      {isStopped && <Message kind="caution">{cautionsOf(plan).beyondPainLimit}</Message>}
      <SaveProblem />
      <StorageNotice />
      {shown.length === 0 && <p>No set was saved this time, so there is nothing to show.</p>}
      {shown.map(({ set, index }) => (
        <SetCard key={index} set={set} index={index} isAlone={shown.length === 1} />
      ))}
      <BackgroundLine />
      {plan !== null && plan.returnKey !== null && shown.length > 0 && (
        <SendBack recipient={plan.returnKey} />
      )}
      <p className="soft">What your therapist or doctor told you comes before anything said here.</p>
    </HomePage>
  );
}

function SetCard({ set, index, isAlone }: { set: HomeSet; index: number; isAlone: boolean }) {
  const home = useHome();
  const { item, result, summary, keeping, problem, recordingId } = set;
  const name = `${itemName(item)}, ${result.side} leg${isAlone ? '' : `, set ${result.number}`}`;
  return (
    <section className="card home-section" aria-label={name}>
      <h2>{name}</h2>
      {problem !== null && <Message kind="caution">{problem}</Message>}
      {summary !== null && (
        <>
          <ToldThing kind="well" title="Done well" text={summary.well} />
          <ToldThing kind="practise" title="To practise" text={summary.practise} />
          {summary.unmeasured !== null && <p className="soft">{summary.unmeasured}</p>}
        </>
      )}
      {summary === null && <p>{withoutSummary(set)}</p>}
      {recordingId !== null && keeping !== 'finishing' && (
        <div className="button-row">
          <Button className="button" onPress={() => void home.reviewSet(index)}>
            View recording
          </Button>
          <Button className="button button-quiet" onPress={() => home.saveSetFile(index)}>
            Save as a file
          </Button>
        </div>
      )}
    </section>
  );
}

function withoutSummary({ result: { heldMs, cutShort }, keeping }: HomeSet): string {
  if (heldMs !== null) return `You held it for ${Math.round(heldMs / 1000)} seconds in total.`;
  if (keeping === 'finishing') return 'The recording is being measured …';
  return cutShort === null
    ? 'There is no recording of this set.'
    : 'You stopped before anything of this set was measured.';
}

/** Shown where the session could not be saved. */
function SaveProblem() {
  const home = useHome();
  const isFailed = useHomeStep('summary', ({ saving }) => saving === 'failed');
  if (!isFailed) return null;
  return (
    <Message
      kind="problem"
      title="Not saved yet"
      actions={
        <Button className="button" onPress={() => void home.saveSession()}>
          Try again
        </Button>
      }
    >
      This device could not save the session. Try again, or save each set as a file.
    </Message>
  );
}
