import { useState } from 'react';
import { Button } from 'react-aria-components';
import { itemName } from '#documents/plan/itemName';
import type { SetStep } from '#documents/plan/planSteps';
import { setupLines } from '#documents/plan/setupLines';
import { ScaleChoice } from '#ui/components/ScaleChoice';
import { message } from '#words/messages/message';
import { painWords } from '#words/painWords';
import type { GuideView } from '../guide/guideView';
import { skipped } from '../guide/phases/closing';
import { useHome, useHomeState } from '../homeContext';
import { Ring } from './Ring';

/** The rest before the next set: first how the last one felt, then how it went and what comes next. */
export function RestView({ view: { step, secondsLeft } }: { view: GuideView }) {
  const index = useHomeState(({ sets }) => sets.length - 1);
  const last = useHomeState(({ sets }) => sets.at(-1));
  const pain = last?.painDuring ?? null;
  const [isChanging, setIsChanging] = useState(false);
  const home = useHome();
  const isBoth = useHomeState(({ painBySide }) => painBySide !== null);
  const left = secondsLeft ?? 0;
  const isAsking = last !== undefined && last.result.cutShort !== skipped && (pain === null || isChanging);
  const answer = (score: number) => {
    home.setPainDuring(index, score);
    setIsChanging(false);
  };
  return (
    <div className="film-rest">
      <div className="film-rest-time">
        <Ring share={step.restSeconds === 0 ? 0 : left / step.restSeconds}>
          <span role="timer" aria-label={message('film.seconds-left', { seconds: left })}>
            {left}
          </span>
        </Ring>
        <div>
          <h1>{message(left === 0 && isAsking ? 'film.rest-long' : 'film.rest')}</h1>
          <p>{isAsking ? message('film.waits') : nextWords(step)}</p>
        </div>
      </div>
      {isAsking ? (
        <ScaleChoice
          question={message('pain.during', { side: isBoth ? last.result.side : 'one' })}
          isSmall
          words={painWords}
          value={pain}
          onChange={answer}
        />
      ) : (
        <div className="film-rest-words">
          {pain !== null && (
            <p>
              {message('film.pain-was', { score: pain, words: painWords(pain) })}{' '}
              <Button className="button button-quiet" onPress={() => setIsChanging(true)}>
                {message('film.change')}
              </Button>
            </p>
          )}
          <LastSet />
          <Next step={step} />
        </div>
      )}
    </div>
  );
}

function nextWords({ item, side, number, ofSets, change }: SetStep): string {
  if (change === 'next-set') return message('film.then-set', { number, of: ofSets });
  if (change === 'other-side') return message('film.then-side', { side });
  return message('film.then-item', { exercise: itemName(item), side });
}

/** How the last set went, unless the plan wants no feedback. */
function LastSet() {
  const last = useHomeState(({ sets }) => sets.at(-1));
  if (last === undefined) return null;
  const { summary, problem, item } = last;
  const isTold = item.kind === 'repetitions' && item.feedback !== 'none';
  return (
    <>
      {problem !== null && <p>{problem}</p>}
      {summary !== null && isTold && (
        <p className="film-summary">
          {summary.well} {summary.practise}
        </p>
      )}
    </>
  );
}

/** How to set up what is new about the next set. */
function Next({ step: { item, side, change } }: { step: SetStep }) {
  if (change === 'next-set') return null;
  return (
    <section className="home-section" aria-label={message('film.next')}>
      <h2>{message('camera.set-up')}</h2>
      <ol className="film-steps">
        {setupLines(item, side).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
    </section>
  );
}
