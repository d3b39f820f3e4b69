import { message } from '#words/messages/message';
import type { PlacingCheck } from '../placing/placing';

/** All checks of the placing, quietly: where there is no room for words, their marks alone. */
export function CheckList({ checks }: { checks: readonly PlacingCheck[] }) {
  const good = checks.filter(({ state }) => state === 'good').length;
  return (
    <div className="checks">
      <p className="checks-count small">{message('film.checks-good', { good, all: checks.length })}</p>
      <ul className="checks-list" aria-label={message('film.checks')}>
        {checks.map(({ id, state, short }) => (
          <li key={id}>
            <CheckMark state={state} />
            <span className="checks-words">{short}</span>
            <span className="visually-hidden">{message(`film.check.${state}`)}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function CheckMark({ state }: { state: PlacingCheck['state'] }) {
  return (
    <svg className="check-mark" viewBox="-10 -10 20 20" aria-hidden="true">
      {state === 'good' && (
        <>
          <circle r="8" fill="var(--in-line)" />
          <path d="M-4 0L-1 3.5L4.5 -3.5" />
        </>
      )}
      {state === 'move' && <path className="check-move" d="M-6.5 -6.5H6.5V6.5H-6.5Z" />}
      {state === 'unknown' && <circle className="check-unknown" r="7" />}
    </svg>
  );
}
