import { message } from '#words/messages/message';

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
        <strong>{message('rules.after-pain')}</strong> {beyondPainLimit}
      </p>
      <p>
        <strong>{message('rules.gave-way')}</strong> {ifItGivesWay}
      </p>
    </>
  );
}
