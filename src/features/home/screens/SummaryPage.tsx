import { Button } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import type { Concern } from '#documents/session/concernsOf';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { concernsNow } from '../store/concernsNow';
import type { HomeSet } from '../store/homeState';
import { toldSets } from '../store/telling';
import { concernAdvice, concernWords } from './concernWords';
import { HomePage } from './HomePage';
import { MeasuringLine } from './MeasuringLine';
import { ReplayPage } from './ReplayPage';
import { SendBack } from './SendBack';
import { SetLine } from './SetLine';
import { StorageNotice } from './StorageNotice';
import { ToldResult } from './ToldResult';

/** How it went; from there repetitions in slow motion, and the page that sends the session. */
export function SummaryPage() {
  const home = useHome();
  const page = useHomeStep('summary', (part) => part.page);
  const plan = useHomeState((state) => state.plan);
  const isFilmed = useHomeState((state) => toldSets(state).some(({ recordingId }) => recordingId !== null));
  if (page === 'replay') return <ReplayPage />;
  if (page === 'result' || plan === null || plan.returnKeys.length === 0) return <ResultPage />;
  return (
    <SendBack
      sessionId={home.sessionId()}
      recipients={plan.returnKeys}
      wish={plan.videoWish}
      hasSets={isFilmed}
      onBack={() => home.back()}
      onDone={() => home.leave()}
    />
  );
}

/** In plain words: one thing done well, one to practise; where it was too much, that first. */
function ResultPage() {
  const home = useHome();
  const state = useHomeState((all) => all);
  const { sets, plan, endedBecause } = state;
  const { saving, told, change } = useHomeStep('summary', (part) => part);
  const concerns = concernsNow(state);
  const isTooMuch = concerns.length > 0;
  const shown = told ?? toldSets(state);
  const advice = new Set(concerns.flatMap((concern) => concernAdvice(concern, cautionsOf(plan))));
  const isFinishing = sets.some(({ keeping }) => keeping === 'finishing');
  const canSend = (plan?.returnKeys ?? []).length > 0 && (isTooMuch || shown.length > 0);
  return (
    <HomePage
      title={titleOf(concerns, endedBecause !== null, sets.length > 0)}
      leave={isTooMuch ? undefined : { words: message('summary.another'), onPress: () => home.startOver() }}
      actions={
        <>
          {canSend && (
            <Button
              className="button button-primary"
              isDisabled={saving !== 'saved' || isFinishing}
              onPress={() => home.showSendingNow()}
            >
              {message('summary.send')}
            </Button>
          )}
          <Button className={canSend ? 'button' : 'button button-primary'} onPress={() => home.leave()}>
            {message('summary.done')}
          </Button>
        </>
      }
    >
      {[...advice].map((sentence) => (
        <p key={sentence} className="flag-advice">
          {sentence}
        </p>
      ))}
      {isTooMuch && (
        <>
          <ul className="home-list">
            {concerns.map((concern) => (
              <li key={concern.kind}>{concernWords(concern)}</li>
            ))}
          </ul>
          <p>{message('summary.kept')}</p>
        </>
      )}
      <SaveProblem />
      <StorageNotice />
      {shown.length === 0 && !isTooMuch && <p>{message('summary.nothing')}</p>}
      {!isTooMuch && shown.length > 0 && (
        <>
          <div aria-live="polite">{told !== null && <ToldResult told={told} change={change} />}</div>
          {told === null && <MeasuringLine />}
        </>
      )}
      {shown.length > 0 && (
        <ul className="result-sets">
          {shown.map((set, index) => (
            <ResultSet key={index} set={set} isTold={told !== null && !isTooMuch} />
          ))}
        </ul>
      )}
      <p className="soft">{message('home.comes-first')}</p>
    </HomePage>
  );
}

function titleOf(concerns: readonly Concern[], isStopped: boolean, hasBegun: boolean): string {
  const [first] = concerns;
  if (first === undefined) return message(isStopped ? 'summary.stopped' : 'summary.well-done');
  if (!hasBegun) return message('summary.do-not');
  return message(first.kind === 'pain' && !isStopped ? 'summary.too-much' : 'summary.right');
}

function ResultSet({ set, isTold }: { set: HomeSet; isTold: boolean }) {
  const home = useHome();
  const index = useHomeState(({ sets }) => sets.findIndex(({ result }) => result === set.result));
  const isUnsaved = useHomeStep('summary', ({ saving }) => saving === 'failed');
  const { keeping, recordingId } = set;
  const isOnlyHere = keeping === 'memory' || (isUnsaved && recordingId !== null && keeping !== 'finishing');
  return (
    <SetLine set={set} isTold={isTold}>
      {isOnlyHere && (
        <Button className="button" onPress={() => home.saveSetFile(index)}>
          {message('summary.file')}
        </Button>
      )}
    </SetLine>
  );
}

/** Shown where the session could not be saved. */
function SaveProblem() {
  const home = useHome();
  const isFailed = useHomeStep('summary', ({ saving }) => saving === 'failed');
  if (!isFailed) return null;
  return (
    <Message
      kind="problem"
      title={message('summary.unsaved')}
      actions={
        <Button className="button" onPress={() => void home.saveSession()}>
          {message('home.try-again')}
        </Button>
      }
    >
      {message('summary.unsaved.what')}
    </Message>
  );
}
