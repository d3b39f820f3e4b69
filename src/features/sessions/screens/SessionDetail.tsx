import { useState, type ReactNode } from 'react';
import { Button } from 'react-aria-components';
import type { Side } from '#core/protocol/side';
import { longestText } from '#documents/session/sessionDocument';
import { useInitials } from '#features/sharing/screens/useInitials';
import { AskText } from '#ui/components/AskText';
import { momentWords } from '#words/dateWords';
import { useKeptSessions } from '../keptSessionsContext';
import { findingSentence } from '../rules/findingWords';
import { findNeeds } from '../rules/findNeeds';
import type { ListedSession } from '../rules/listedSession';
import { DeleteButton } from './DeleteButton';
import { DeletePatient } from './DeletePatient';
import { countedSets, patientName, scoreWords, sessionLength } from './sessionWords';
import { SetList } from './SetList';

/** One session: what needs a look, how it felt, and its sets. */
export function SessionDetail({ session }: { session: ListedSession }) {
  const keptSessions = useKeptSessions();
  const needs = findNeeds(session);
  const facts = [momentWords(session.startedAt), sessionLength(session), countedSets(session)].filter(
    (fact) => fact !== null,
  );
  const line = facts.map((fact) => fact.replaceAll(' ', '\u00a0')).join(' · '); // It breaks between facts.
  const isWhole = session.kind === 'visit';
  return (
    <article className="card sessions-detail" aria-labelledby="session-title">
      <header className="sessions-detail-head">
        <div>
          <h2 id="session-title">{patientName(session.patient)}</h2>
          <p className="soft number">{line}</p>
        </div>
        <DeleteButton
          title={isWhole ? 'Delete this session?' : 'Delete this recording?'}
          onDelete={() => keptSessions.remove(session)}
        >
          {isWhole ? `The session of ${momentWords(session.startedAt)} with its sets` : 'This recording'}, all
          measurements and the videos will be deleted from this device. Files saved elsewhere stay.
        </DeleteButton>
      </header>
      {needs.length > 0 && (
        <section className="sessions-needs" aria-labelledby="needs-title">
          <h3 id="needs-title">Needs a look</h3>
          <ul>
            {needs.map((finding) => (
              <li key={finding.kind}>{findingSentence(finding)}</li>
            ))}
          </ul>
          {session.isOpen && <Settle session={session} />}
          {session.settlement?.by === 'therapist' && session.patient !== '' && <Reopen session={session} />}
        </section>
      )}
      {isWhole && session.silence === null && <Feeling session={session} />}
      <section aria-labelledby="sets-title">
        <h3 id="sets-title">Sets</h3>
        {session.sets.length === 0 ? (
          <p className="soft">
            {session.silence === null
              ? 'The session ended before its first set was done.'
              : 'Nothing was done: this record holds what the patient answered.'}
          </p>
        ) : (
          <SetList session={session} />
        )}
      </section>
      {session.patient !== '' && (
        <footer>
          <DeletePatient patient={session.patient} />
        </footer>
      )}
    </article>
  );
}

/** Until somebody signs, the session stays on top of the list. */
function Settle({ session: { id } }: { session: ListedSession }) {
  const keptSessions = useKeptSessions();
  return (
    <SignButton
      className="button"
      name="Sign as settled …"
      title="Has this been settled?"
      hint="They are kept in the record with today’s date. The patient’s own device keeps asking until the patient says who cleared it."
      onSign={(who) => void keptSessions.settle(id, who)}
    />
  );
}

/** Where it was settled too early, or by mistake. */
function Reopen({ session: { id } }: { session: ListedSession }) {
  const keptSessions = useKeptSessions();
  return (
    <SignButton
      className="button button-quiet"
      name="Open again …"
      title="Open this again?"
      hint="They are kept in the record with today’s date. The session counts as not settled until somebody signs again; who had settled it stays in the record."
      onSign={(who) => void keptSessions.reopen(id, who)}
    />
  );
}

interface Signing {
  className: string;
  name: string;
  title: string;
  hint: string;
  onSign: (who: string) => void;
}

function SignButton({ className, name, title, hint, onSign }: Signing) {
  const { by, remember } = useInitials();
  const [isAsking, setAsking] = useState(false);
  return (
    <div className="button-row">
      <Button className={className} onPress={() => setAsking(true)}>
        {name}
      </Button>
      <AskText
        isOpen={isAsking}
        onOpenChange={setAsking}
        title={title}
        label="Your initials"
        hint={hint}
        answer="Sign"
        initial={by}
        maxLength={longestText.who}
        onAnswer={(who) => {
          remember(who);
          onSign(who);
        }}
      />
    </div>
  );
}

function Feeling({ session }: { session: ListedSession }) {
  const { painBefore, painAfter, painBySide, painLimit, effort, remark, sets } = session;
  const during = sets.flatMap(({ line }) => (line.painDuring === null ? [] : [line.painDuring]));
  return (
    <section className="sessions-feeling" aria-label="How it felt">
      <dl>
        <Fact name="Pain before">{kneeWords(painBefore, painBySide?.before)}</Fact>
        <Fact name="Most pain during">{scoreWords(during.length === 0 ? null : Math.max(...during))}</Fact>
        <Fact name="Pain after">{kneeWords(painAfter, painBySide?.after)}</Fact>
        <Fact name="Pain limit">{painLimit === null ? 'not known' : painLimit}</Fact>
        <Fact name="Effort">{scoreWords(effort)}</Fact>
      </dl>
      <p className="small soft">
        Each from 0 to 10.
        {painLimit === null && ' The plan of this session is no longer kept here, so its limit is not known.'}
      </p>
      {remark !== '' && (
        <figure className="sessions-remark">
          <figcaption className="small soft">Remark</figcaption>
          <blockquote>{remark}</blockquote>
        </figure>
      )}
    </section>
  );
}

/** The score, of each knee where both were asked. */
function kneeWords(score: number | null, knees: Record<Side, number | null> | undefined): string {
  if (knees === undefined) return scoreWords(score);
  return `left ${scoreWords(knees.left)}, right ${scoreWords(knees.right)}`;
}

function Fact({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div>
      <dt className="small soft">{name}</dt>
      <dd className="number">{children}</dd>
    </div>
  );
}
