import { useState } from 'react';
import { Button } from 'react-aria-components';
import { effortWords, painWords, scaleQuestions } from '#core/safety/painScale';
import { Message } from '#ui/components/Message';
import { ScaleChoice } from '#ui/components/ScaleChoice';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';
import { RemarkPage } from './RemarkPage';

type QuestionId = 'painDuring' | 'painAfter' | 'effort';

/** How it was: one question per page, then a remark; each may be skipped. */
export function AfterPage() {
  const home = useHome();
  const sets = useHomeState((state) => state.sets);
  const { painAfter, effort, painWarning: warning } = useHomeStep('after', (part) => part);
  const [at, setAt] = useState(0);
  const lastSet = sets.length - 1;
  const questions: QuestionId[] = [...(lastSet >= 0 ? (['painDuring'] as const) : []), 'painAfter', 'effort'];
  const id = questions[at];
  const back = at === 0 ? undefined : { words: 'Back', onPress: () => setAt(at - 1) };
  if (id === undefined) return <RemarkPage back={back} />;

  const value = { painDuring: sets[lastSet]?.painDuring ?? null, painAfter, effort }[id];
  const answer = (score: number) => {
    if (id === 'painDuring') home.setPainDuring(lastSet, score);
    else if (id === 'painAfter') home.setPainAfter(score);
    else home.setEffort(score);
  };
  const isWarned = warning !== null && warning.when === (id === 'painDuring' ? 'during' : 'after');
  return (
    <HomePage
      key={id}
      title={scaleQuestions[id].question}
      leave={back}
      actions={
        <Button className={value === null ? 'button' : 'button button-primary'} onPress={() => setAt(at + 1)}>
          {value === null ? 'Skip' : 'Continue'}
        </Button>
      }
    >
      <ScaleChoice
        question={scaleQuestions[id].question}
        isQuestionHidden
        words={id === 'effort' ? effortWords : painWords}
        value={value}
        onChange={answer}
      />
      {isWarned && id !== 'effort' && <Message kind="caution">{warning.advice}</Message>}
    </HomePage>
  );
}
