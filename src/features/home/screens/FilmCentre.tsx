import { findPreparation } from '#core/exercises/findPreparation';
import type { GuideView } from '../guide/guideView';
import { BigWords } from './BigWords';
import { CountView } from './CountView';
import { HoldView } from './HoldView';
import { PausedView } from './PausedView';
import { PlacingView } from './PlacingView';
import { RestView } from './RestView';
import { StoppedView } from './StoppedView';

const readyWords = { seated: 'Sit down', standing: 'Stand ready', 'as-shown': 'Get ready' };

/** What is shown over the picture, or in its place: one thing per phase. */
export function FilmCentre({ view }: { view: GuideView }) {
  const { phase, step, hold, count } = view;
  switch (phase) {
    case 'placing':
      return <PlacingView view={view} />;
    case 'bends':
      return <Told words="Two easy bends" />;
    case 'standing':
      return <Told words="Stand still" />;
    case 'ready': {
      const { start } = findPreparation(step.item.task, step.side);
      return <Told words={readyWords[start]} />;
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
      return <Told words={count === null ? 'Set done' : `${doneWords(view)} done`} isGood />;
    case 'resting':
      return <RestView view={view} />;
    case 'all-done':
      return <Told words="All done" isGood />;
    case 'stopped':
      return <StoppedView />;
  }
}

function doneWords({ count, ofCount }: GuideView): string {
  return `${count} of ${ofCount}`;
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
