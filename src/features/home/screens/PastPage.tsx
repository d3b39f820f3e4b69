import { effortWords, painWords } from '#core/safety/painScale';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { dayWords } from '#words/dateWords';
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
    <HomePage
      title={`Last time, ${dayWords(session.startedAt)}`}
      leave={{ words: 'Back', onPress: () => home.back() }}
    >
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
    ['Pain before', painBefore, painWords],
    ['Most pain in a set', during.length === 0 ? null : Math.max(...during), painWords],
    ['Pain afterwards', painAfter, painWords],
    ['Effort', effort, effortWords],
  ] as const;
  return (
    <section className="home-section">
      <h2>What you said</h2>
      <ul className="home-list">
        {scores.map(
          ([name, score, words]) =>
            score !== null && (
              <li key={name}>
                {name}: {score}, {words(score)}
              </li>
            ),
        )}
      </ul>
      {remark !== '' && <blockquote className="plan-words">{remark}</blockquote>}
    </section>
  );
}
