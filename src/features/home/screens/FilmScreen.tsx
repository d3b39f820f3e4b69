import { useMemo } from 'react';
import { findPreparation } from '#core/exercises/findPreparation';
import { useHomeStep } from '../homeContext';
import { CheckList } from './CheckList';
import { FilmActions } from './FilmActions';
import { FilmCentre } from './FilmCentre';
import { FilmNotice } from './FilmNotice';
import { furnitureToAsk } from './furnitureToAsk';
import { hasLiveFeedback } from './hasLiveFeedback';
import { MirrorStage } from './MirrorStage';
import './film.css';

const withoutPicture = ['resting', 'set-done', 'all-done', 'stopped'];

/** While a set is done: what to do now in the largest type there is, over the live picture, and a few buttons. */
export function FilmScreen() {
  const view = useHomeStep('exercise', (part) => part.guide);
  const placing = useHomeStep('exercise', (part) => part.placing);
  const caption = useHomeStep('exercise', (part) => part.caption);
  const isFurniturePlaced = useHomeStep('exercise', (part) => part.isFurniturePlaced);
  const isWarned = useHomeStep('exercise', ({ painWarning }) => painWarning !== null);
  const item = view?.step.item;
  const side = view?.step.side;
  const isDrawn = view !== null && view.phase !== 'paused' && view.phase !== 'placing';
  const leg = useMemo(() => {
    if (!isDrawn || item === undefined || side === undefined || item.kind === 'hold') return undefined;
    return { side, limits: hasLiveFeedback(item) ? item.limits : null };
  }, [isDrawn, item, side]);
  if (view === null) return null;

  const { phase, step } = view;
  const isPlacing = phase === 'placing' && furnitureToAsk(step.item, isFurniturePlaced) === null;
  const hasCamera = findPreparation(step.item.task, step.side).camera !== null;
  return (
    <main className="film always-dark" data-phase={phase}>
      <div className="film-stage">
        {hasCamera && !withoutPicture.includes(phase) && <MirrorStage leg={leg} />}
        <FilmCentre view={view} />
        <div className="film-foot">
          {isPlacing && placing !== null && <CheckList checks={placing.checks} />}
          <FilmNotice isCalm={isPlacing} />
        </div>
      </div>
      <div className="film-dock">
        <p className="film-caption" aria-live="polite">
          {phase === 'stopped' ? '' : caption}
        </p>
        {!(isWarned && phase === 'paused') && <FilmActions view={view} />}
      </div>
    </main>
  );
}
