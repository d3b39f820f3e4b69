import { Button } from 'react-aria-components';
import { useStore } from 'zustand';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { troubles } from './troubles';
import { TroubleText } from './TroubleText';
import './opening.css';

/** Tells of an error outside of any screen; the screen goes on. */
export function TroubleStrip({ screen }: { screen: string }) {
  const error = useStore(troubles, (state) => state.error);
  if (error === null) return null;
  return (
    <div className="trouble-strip">
      <Message
        kind="problem"
        title={message('app.unforeseen')}
        actions={
          <Button className="button button-quiet" onPress={() => troubles.setState({ error: null })}>
            {message('home.close')}
          </Button>
        }
      >
        {message('app.unforeseen.what')}
        <TroubleText thrown={error.thrown} screen={screen} />
      </Message>
    </div>
  );
}
