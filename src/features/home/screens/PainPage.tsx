import { Button } from 'react-aria-components';
import { useShallow } from 'zustand/react/shallow';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { isPainAnswered } from '../store/isPainAnswered';
import { HomePage } from './HomePage';
import { painQuestion, PainScales } from './PainScales';

/**
 * How much it hurts before anything is done, each knee by itself where both legs work. Above the limit the way on is
 * closed, unless the plan opens it.
 */
export function PainPage() {
  const home = useHome();
  const said = useHomeState(useShallow(({ painBefore, painBySide }) => ({ painBefore, painBySide })));
  const warning = useHomeStep('pain-before', (part) => part.painWarning);
  const isAnswered = isPainAnswered(said);
  return (
    <HomePage
      title={painQuestion(said)}
      back={() => home.back()}
      actions={
        warning === null ? (
          <Button
            className="button button-primary"
            isDisabled={!isAnswered}
            onPress={() => home.goOnFromPain()}
          >
            {message(isAnswered ? 'home.continue' : 'pain.choose')}
          </Button>
        ) : (
          <>
            <Button className="button button-primary" onPress={() => home.stopBeforeStart()}>
              {message('pain.end-here')}
            </Button>
            {warning.mayGoOn && (
              <Button className="button" isDisabled={!isAnswered} onPress={() => home.goOnFromPain(true)}>
                {message('pain.go-on')}
              </Button>
            )}
          </>
        )
      }
    >
      <PainScales said={said} onChange={(score, side) => home.setPainBefore(score, side)} />
      {warning !== null && (
        <Message kind="problem">
          {warning.advice} {warning.words}
        </Message>
      )}
    </HomePage>
  );
}
