import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';

/** A problem that loading the page again may end. */
export function ReloadMessage({ title, children }: { title: string; children: ReactNode }) {
  return (
    <Message
      kind="problem"
      title={title}
      actions={
        <Button className="button" onPress={() => location.reload()}>
          {message('app.reload')}
        </Button>
      }
    >
      {children}
    </Message>
  );
}
