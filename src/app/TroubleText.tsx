import { diagnosticText } from '#shell/diagnosticText';

/** What to pass on when something went wrong; nothing in it tells of a person. */
export function TroubleText({ thrown, screen }: { thrown: unknown; screen: string }) {
  return (
    <details>
      <summary>Technical details, without health data</summary>
      <textarea
        className="trouble-text"
        readOnly
        rows={8}
        aria-label="Technical details"
        value={diagnosticText(thrown, { screen, browser: navigator.userAgent })}
        onFocus={(event) => event.target.select()}
      />
    </details>
  );
}
