import { findExercise } from '#core/exercises/exercises';
import { message } from '#words/messages/message';
import type { GuideView } from '../guide/guideView';
import { BigWords } from './BigWords';
import { CountView } from './CountView';
import { HoldView } from './HoldView';
import { PausedView } from './PausedView';
import { PlacingView } from './PlacingView';
import { RestView } from './RestView';
import { StoppedView } from './StoppedView';

/** What is shown over the picture, or in its place: one thing per phase. */
export function FilmCentre({ view }: { view: GuideView }) {
  const { phase, step, hold, count } = view;
  switch (phase) {
    case 'placing':
      return <PlacingView view={view} />;
    case 'bends':
      return <Told words={message('film.two-bends')} />;
    case 'standing':
      return <Told words={message('film.stand-still')} />;
    case 'ready': {
      const { start } = findExercise(step.item.task).preparation;
      return <Told words={message(`film.ready.${start}`)} />;
    }
    case 'countdown':
      return (
        <p className="film-second" aria-hidden="true">
          {view.secondsLeft}
        </p>
      );
    case 'working':
    case 'finishing':
      if (hold !== null) return <HoldView view={view} hold={hold} />;
      return <CountView view={view} />;
    case 'paused':
      return <PausedView view={view} />;
    case 'set-done':
      return (
        <Told
          words={
            count === null
              ? message('film.set-done')
              : message('film.count-done', { count, of: view.ofCount })
          }
          isGood
        />
      );
    case 'resting':
      return <RestView view={view} />;
    case 'all-done':
      return <Told words={message('film.all-done')} isGood />;
    case 'stopped':
      return <StoppedView />;
  }
}

interface ToldProps {
  words: string;
  isGood?: boolean;
}

function Told({ words, isGood = false }: ToldProps) {
  return (
    <div className={isGood ? 'film-told film-good' : 'film-told'}>
      <BigWords text={words} />
    </div>
  );
}
