import { message } from '#words/messages/message';

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
        <strong>{message('rules.after-pain')}</strong> {beyondPainLimit}
      </p>
      <p>
        <strong>{message('rules.gave-way')}</strong> {ifItGivesWay}
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
          <summary>{message('rules.afterwards')}</summary>
          {afterwards}
        </details>
      ) : (
        afterwards
      )}
    </>
  );
}
