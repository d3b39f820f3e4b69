import { useEffect, useState } from 'react';
import { message } from '#words/messages/message';
import { ReloadMessage } from './ReloadMessage';
import './opening.css';

/** Longer than each step of opening may take, so that a step's own sentence comes first. */
const longMs = 12_000;

/**
 * While a screen's code is fetched or what is kept is opened: nothing at first, then a word, and a way out if it
 * never ends.
 */
export function OpeningScreen() {
  const [isLong, setIsLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setIsLong(true), longMs);
    return () => clearTimeout(timer);
  }, []);
  return (
    <main className="opening" aria-busy="true">
      {isLong ? (
        <ReloadMessage title={message('app.slow')}>{message('app.slow.what')}</ReloadMessage>
      ) : (
        <p className="opening-word soft" role="status">
          {message('app.opening')}
        </p>
      )}
    </main>
  );
}
