import { Button } from 'react-aria-components';
import { useStore } from 'zustand';
import { Message } from '#ui/components/Message';
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
        title="Something went wrong that was not foreseen"
        actions={
          <Button className="button button-quiet" onPress={() => troubles.setState({ error: null })}>
            Close
          </Button>
        }
      >
        What is kept on this device stays. If something on this page no longer answers, reload it.
        <TroubleText thrown={error.thrown} screen={screen} />
      </Message>
    </div>
  );
}
