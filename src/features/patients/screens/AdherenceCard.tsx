import { usualSilentFrom } from '#core/adherence/adherence';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { adherenceSentences } from '#words/adherenceSentences';
import { usePatientsState } from '../patientsContext';
import { followingOf, planAdherence } from '../rules/planAdherence';
import { Pauses } from './Pauses';
import './programme.css';

/** How much of what the plan in force asks for was done, week by week. */
export function AdherenceCard({ sessions }: { sessions: readonly ListedSession[] }) {
  const [plan] = usePatientsState((state) => state.plans);
  const pauses = usePatientsState((state) => state.patient?.pauses) ?? [];
  const readAtMs = usePatientsState((state) => state.readAtMs);
  const found = plan === undefined ? null : planAdherence(followingOf(plan, sessions), pauses, readAtMs);
  if (found === null) return null;
  const most = Math.max(1, ...found.weeks.map(({ due }) => due));
  return (
    <section className="card programme" aria-labelledby="adherence-title">
      <h2 id="adherence-title">Done and due</h2>
      {adherenceSentences(found).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <ol className="adherence-weeks" aria-label="Weeks since the plan was given" tabIndex={0}>
        {found.weeks.map(({ week, done, due }) => (
          <li key={week}>
            <span className="adherence-due" style={{ height: `${(100 * due) / most}%` }} aria-hidden="true">
              <span className="adherence-done" style={{ height: due === 0 ? 0 : `${(100 * done) / due}%` }} />
            </span>
            <span className="small number">
              <span className="visually-hidden">
                Week {week + 1}: {done} of {due}
              </span>
              <span aria-hidden="true">{week + 1}</span>
            </span>
          </li>
        ))}
      </ol>
      <Pauses />
      <p className="small soft">
        Stopping because of pain, as agreed, counts as done. After a sign or a knee that gave way, nothing is
        due until there is a session again, nor in a pause. Silence is said from {usualSilentFrom} days on.
        Our choice, no source.
      </p>
    </section>
  );
}
