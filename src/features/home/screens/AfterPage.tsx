import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Side } from '#core/protocol/side';
import { Message } from '#ui/components/Message';
import { ScaleChoice } from '#ui/components/ScaleChoice';
import { message } from '#words/messages/message';
import { effortWords, painWords } from '#words/painWords';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import type { HomeState, PainWarning } from '../store/homeState';
import { openPain } from '../store/openPain';
import { HomePage } from './HomePage';
import { RemarkPage } from './RemarkPage';
import { setName } from './setWords';

type Question =
  | { about: 'fell' }
  | { about: 'dayAfter'; question: string }
  | { about: 'painDuring'; set: number; question: string }
  | { about: 'painAfter'; side: Side | null; question: string }
  | { about: 'effort'; question: string };

/** How it was: one question per page, then a remark; each may be skipped. */
export function AfterPage() {
  const home = useHome();
  const state = useHomeState((all) => all);
  const [questions] = useState(() => questionsOf(state));
  const [at, setAt] = useState(0);
  const current = questions[at];
  const back = at === 0 ? undefined : () => setAt(at - 1);
  const next = () => setAt(at + 1);
  if (current === undefined) return <RemarkPage back={back} />;
  if (current.about === 'fell') {
    const answer = (fell: boolean) => {
      home.setFell(fell);
      next();
    };
    return (
      <HomePage key="fell" title={message('after.fell')}>
        <div className="home-section">
          <Button className="button flag-button" onPress={() => answer(false)}>
            {message('after.no')}
          </Button>
          <Button className="button flag-button" onPress={() => answer(true)}>
            {message('after.yes')}
          </Button>
        </div>
      </HomePage>
    );
  }
  return <Scale key={at} current={current} back={back} onNext={next} />;
}

interface ScaleProps {
  current: Exclude<Question, { about: 'fell' }>;
  back: (() => void) | undefined;
  onNext: () => void;
}

function Scale({ current, back, onNext }: ScaleProps) {
  const home = useHome();
  const value = useHomeState((state) => valueOf(state, current));
  const warning = useHomeStep('after', (part) => part.painWarning);
  const { about, question } = current;
  const answer = (score: number) => {
    if (about === 'dayAfter') home.setWorstAfterLast(score);
    else if (about === 'painDuring') home.setPainDuring(current.set, score);
    else if (about === 'painAfter') home.setPainAfter(score, current.side);
    else home.setEffort(score);
  };
  const isWarned = warning !== null && warning.when === warnedOf[about];
  return (
    <HomePage
      title={question}
      back={back}
      actions={
        <Button className={value === null ? 'button' : 'button button-primary'} onPress={onNext}>
          {message(value === null ? 'home.skip' : 'home.continue')}
        </Button>
      }
    >
      <ScaleChoice
        question={question}
        isQuestionHidden
        words={about === 'effort' ? effortWords : painWords}
        value={value}
        onChange={answer}
      />
      {isWarned && (
        <Message kind="caution">
          {warning.advice} {warning.words}
        </Message>
      )}
    </HomePage>
  );
}

/** Which warning belongs to which question. */
const warnedOf: Partial<Record<Question['about'], PainWarning['when']>> = {
  painDuring: 'during',
  painAfter: 'after',
};

/** What is still open; after a stop nobody is asked how hard it was. */
function questionsOf({ sets, painBySide, endedBecause, isUnfilmed, afterLast }: HomeState): Question[] {
  const mayHaveFallen = endedBecause !== null && endedBecause.reason !== 'pain';
  // Of what was done without filming, it is asked once.
  const open = openPain(sets).slice(isUnfilmed ? -1 : 0);
  const during = open.map((set): Question => {
    if (isUnfilmed) return { about: 'painDuring', set, question: message('pain.during-unfilmed') };
    const { item, result } = sets[set]!;
    const question = message('pain.during', { side: painBySide === null ? 'one' : result.side });
    if (open.length === 1) return { about: 'painDuring', set, question };
    const which = message('after.which', { set: setName({ item, result }), question });
    return { about: 'painDuring', set, question: which };
  });
  const after = (painBySide === null ? [null] : (['left', 'right'] as const)).map((side): Question => ({
    about: 'painAfter',
    side,
    question: message('pain.after', { side: side ?? 'one' }),
  }));
  return [
    ...(mayHaveFallen ? [{ about: 'fell' as const }] : []),
    ...(isUnfilmed && afterLast !== null
      ? [{ about: 'dayAfter' as const, question: message('after.day-after') }]
      : []),
    ...during,
    ...after,
    ...(endedBecause === null ? [{ about: 'effort' as const, question: message('pain.effort') }] : []),
  ];
}

function valueOf(state: HomeState, current: ScaleProps['current']): number | null {
  if (current.about === 'dayAfter') return state.afterLast?.worst ?? null;
  if (current.about === 'painDuring') return state.sets[current.set]?.painDuring ?? null;
  if (state.step !== 'after') return null;
  if (current.about === 'effort') return state.effort;
  const { painBySide, painAfter } = state;
  return current.side === null || painBySide === null ? painAfter : painBySide.after[current.side];
}
