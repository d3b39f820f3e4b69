import { Button } from 'react-aria-components';
import { painWords, scaleQuestions } from '#core/safety/painScale';
import { Message } from '#ui/components/Message';
import { ScaleChoice } from '#ui/components/ScaleChoice';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';

/** How much it hurts before anything is done; above the limit the way on is closed, unless the therapist opened it. */
export function PainPage() {
  const home = useHome();
  const score = useHomeState((state) => state.painBefore);
  const warning = useHomeStep('pain-before', (part) => part.painWarning);
  const goOnAllTheSame = () => {
    home.setToldToGoOn(true);
    home.goOnFromPain();
  };
  return (
    <HomePage
      title={scaleQuestions.painBefore.question}
      leave={{ words: 'Back', onPress: () => home.back() }}
      actions={
        warning === null ? (
          <Button
            className="button button-primary"
            isDisabled={score === null}
            onPress={() => home.goOnFromPain()}
          >
            {score === null ? 'Choose a number' : 'Continue'}
          </Button>
        ) : (
          <>
            <Button className="button button-primary" onPress={() => home.stopBeforeStart()}>
              End here for today
            </Button>
            <Button className="button" onPress={goOnAllTheSame}>
              My therapist told me to continue
            </Button>
          </>
        )
      }
    >
      <ScaleChoice
        question={scaleQuestions.painBefore.question}
        isQuestionHidden
        words={painWords}
        value={score}
        onChange={(value) => home.setPainBefore(value)}
      />
      {warning !== null && <Message kind="problem">{warning.advice}</Message>}
    </HomePage>
  );
}
