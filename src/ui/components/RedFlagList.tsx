import { redFlags } from '#core/safety/redFlags';

/** The signs that speak against exercising. */
export function RedFlagList({ className }: { className?: string }) {
  return (
    <ul className={className}>
      {redFlags.map(({ id, words }) => (
        <li key={id}>{words}.</li>
      ))}
    </ul>
  );
}
