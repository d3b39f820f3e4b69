import type { ComponentType } from 'react';
import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
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
      <Message kind="problem" title={message('app.stopped')} isLarge>
        <p>{message('app.stopped.what')}</p>
      </Message>
      <div className="button-row">
        <Button className="button button-primary" onPress={onStart}>
          {message('app.to-start')}
        </Button>
        <Button className="button" onPress={() => location.reload()}>
          {message('app.reload')}
        </Button>
        {onSave !== null && (
          <Button className="button" onPress={onSave}>
            {message('app.save-recording')}
          </Button>
        )}
        <Backup />
      </div>
      <TroubleText thrown={thrown} screen={screen} />
    </main>
  );
}
