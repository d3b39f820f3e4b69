import { redFlags } from '#core/safety/redFlags';
import { signWords } from '#words/signWords';

/** The signs that mean: do not exercise. */
export function RedFlagList({ className }: { className?: string }) {
  return (
    <ul className={className}>
      {redFlags.map(({ id }) => (
        <li key={id}>{signWords(id)}.</li>
      ))}
    </ul>
  );
}
