import { useKeptSessions, useKeptSessionsState } from '../keptSessionsContext';
import { DeleteButton } from './DeleteButton';

/** Records that can't be read: why, and a way to delete them. */
export function UnreadableRecords() {
  const keptSessions = useKeptSessions();
  const removals = useKeptSessionsState((state) => state.removals);
  const all = useKeptSessionsState((state) => state.unreadable);
  const unreadable = all.filter(({ id }) => removals.every((removal) => removal.id !== id));
  if (unreadable.length === 0) return null;
  return (
    <section className="sessions-unreadable small" aria-labelledby="unreadable-title">
      <h3 id="unreadable-title">Can’t be read</h3>
      <ul>
        {unreadable.map(({ id, kind, sentence }) => (
          <li key={id}>
            <p>
              {kind === 'visit' ? 'A session' : 'A recording'}: {sentence}
            </p>
            <DeleteButton title="Delete this record?" onDelete={() => keptSessions.remove({ id, kind })}>
              What can’t be read now may be readable with a newer version of this program. Once deleted, it
              and its videos can’t be recovered.
            </DeleteButton>
          </li>
        ))}
      </ul>
    </section>
  );
}
