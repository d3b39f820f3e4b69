import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import './opening.css';

/** In place of a screen whose code could not be fetched. */
export function NotLoaded() {
  return (
    <main className="opening">
      <Message
        kind="problem"
        title="This part of Overfoot could not be loaded"
        actions={
          <Button className="button" onPress={() => location.reload()}>
            Reload the page
          </Button>
        }
      >
        Check the connection, then reload the page. Nothing kept on this device is lost.
      </Message>
    </main>
  );
}
