import { Suspense, type ComponentType } from 'react';
import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { TroubleText } from './TroubleText';
import './opening.css';

interface Props {
  thrown: unknown;
  screen: string;
  onStart: () => void;
  /** Saves what is open as a file; null where nothing is. */
  onSave: (() => void) | null;
  /** Saves a backup of everything that is kept. */
  Backup: ComponentType;
}

/** In place of a screen that failed: what is kept stays, and what is open can still be saved. */
export function TroublePage({ thrown, screen, onStart, onSave, Backup }: Props) {
  return (
    <main className="opening">
      <Message kind="problem" title="This screen stopped working" isLarge>
        <p>
          Nothing that is kept on this device was lost. Go back to the start, or reload the page. If it
          happens again, save a backup, and send the text below to whoever looks after this page for you.
        </p>
      </Message>
      <div className="button-row">
        <Button className="button button-primary" onPress={onStart}>
          Go to the start
        </Button>
        <Button className="button" onPress={() => location.reload()}>
          Reload the page
        </Button>
        {onSave !== null && (
          <Button className="button" onPress={onSave}>
            Save the open recording as a file
          </Button>
        )}
        <Suspense>
          <Backup />
        </Suspense>
      </div>
      <TroubleText thrown={thrown} screen={screen} />
    </main>
  );
}
