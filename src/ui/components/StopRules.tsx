interface Props {
  /** When to stop, one sentence each. */
  stop: readonly string[];
  beyondPainLimit: string;
  ifItGivesWay: string;
  listClassName?: string;
}

/** When to stop an exercise, and what to do then. */
export function StopRules({ stop, beyondPainLimit, ifItGivesWay, listClassName }: Props) {
  return (
    <>
      <ul className={listClassName}>
        {stop.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p>
        <strong>What to do after pain:</strong> {beyondPainLimit}
      </p>
      <p>
        <strong>If the knee gave way, locked or got stuck:</strong> {ifItGivesWay}
      </p>
    </>
  );
}
