import { message } from '#words/messages/message';
import { ReloadMessage } from './ReloadMessage';
import './opening.css';

/** In place of a screen whose code could not be fetched. */
export function NotLoaded() {
  return (
    <main className="opening">
      <ReloadMessage title={message('app.not-loaded')}>{message('app.not-loaded.what')}</ReloadMessage>
    </main>
  );
}
