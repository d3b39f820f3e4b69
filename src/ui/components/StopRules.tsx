interface Props {
  /** When to stop, one sentence each. */
  stop: readonly string[];
  beyondPainLimit: string;
  ifItGivesWay: string;
  /** Whether what to do then is shown only to those who ask for it, since it is said again when it is needed. */
  isFolded?: boolean;
}

/** When to stop an exercise, and what to do then. */
export function StopRules({ stop, beyondPainLimit, ifItGivesWay, isFolded = false }: Props) {
  const afterwards = (
    <>
      <p>
        <strong>What to do after pain:</strong> {beyondPainLimit}
      </p>
      <p>
        <strong>If the knee gave way, locked or got stuck:</strong> {ifItGivesWay}
      </p>
    </>
  );
  return (
    <>
      <ul className="stop-rules">
        {stop.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {isFolded ? (
        <details>
          <summary>What to do then</summary>
          {afterwards}
        </details>
      ) : (
        afterwards
      )}
    </>
  );
}
