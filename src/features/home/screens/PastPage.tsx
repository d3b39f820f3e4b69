import type { SessionDocument } from '#documents/session/sessionDocument';
import { dayWords } from '#words/dateWords';
import { message } from '#words/messages/message';
import { effortWords, painWords } from '#words/painWords';
import { useHome, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';
import { SetLine } from './SetLine';
import { ToldResult } from './ToldResult';

/** How the last session went, with what was said then. */
export function PastPage() {
  const home = useHome();
  const { session, told, change } = useHomeStep('past', (part) => part);
  if (session === null) return null;
  return (
    <HomePage title={message('past.title', { day: dayWords(session.startedAt) })} back={() => home.back()}>
      <ToldResult told={told} change={change} />
      <ul className="result-sets">
        {told.map((set, index) => (
          <SetLine key={index} set={set} isTold />
        ))}
      </ul>
      <Said session={session} />
    </HomePage>
  );
}

function Said({ session }: { session: SessionDocument }) {
  const { painBefore, painAfter, effort, remark, sets } = session;
  const during = sets.flatMap(({ painDuring }) => (painDuring === null ? [] : [painDuring]));
  const scores = [
    ['past.pain-before', painBefore, painWords],
    ['past.pain-during', during.length === 0 ? null : Math.max(...during), painWords],
    ['past.pain-after', painAfter, painWords],
    ['past.effort', effort, effortWords],
  ] as const;
  return (
    <section className="home-section">
      <h2>{message('past.said')}</h2>
      <ul className="home-list">
        {scores.map(
          ([key, score, words]) =>
            score !== null && <li key={key}>{message(key, { score, words: words(score) })}</li>,
        )}
      </ul>
      {remark !== '' && <blockquote className="plan-words">{remark}</blockquote>}
    </section>
  );
}
