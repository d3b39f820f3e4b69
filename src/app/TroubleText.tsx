import { diagnosticText } from '#shell/diagnosticText';
import { message } from '#words/messages/message';

/** What to pass on when something went wrong; nothing in it tells of a person. */
export function TroubleText({ thrown, screen }: { thrown: unknown; screen: string }) {
  return (
    <details>
      <summary>{message('app.details.label')}</summary>
      <textarea
        className="trouble-text"
        readOnly
        rows={8}
        aria-label={message('app.details')}
        value={diagnosticText(thrown, { screen, browser: navigator.userAgent })}
        onFocus={(event) => event.target.select()}
      />
    </details>
  );
}
