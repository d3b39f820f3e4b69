interface Props {
  /** When to stop, one sentence each. */
  stop: readonly string[];
  beyondPainLimit: string;
  listClassName?: string;
}

/** When to stop an exercise, and what to do then. */
export function StopRules({ stop, beyondPainLimit, listClassName }: Props) {
  return (
    <>
      <ul className={listClassName}>
        {stop.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p>
        <strong>What to do then:</strong> {beyondPainLimit}
      </p>
    </>
  );
}
