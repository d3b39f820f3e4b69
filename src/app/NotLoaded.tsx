import { ReloadMessage } from './ReloadMessage';
import './opening.css';

/** In place of a screen whose code could not be fetched. */
export function NotLoaded() {
  return (
    <main className="opening">
      <ReloadMessage title="This part of Overfoot could not be loaded">
        Check the connection, then reload the page. Nothing kept on this device is lost.
      </ReloadMessage>
    </main>
  );
}
