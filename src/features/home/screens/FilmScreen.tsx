import { useMemo } from 'react';
import { findExercise } from '#core/exercises/exercises';
import type { GuidePhase } from '../guide/guideState';
import { useHomeStep } from '../homeContext';
import { CheckList } from './CheckList';
import { FilmActions } from './FilmActions';
import { FilmCentre } from './FilmCentre';
import { FilmNotice } from './FilmNotice';
import { furnitureToAsk } from './furnitureToAsk';
import { hasLiveFeedback } from './hasLiveFeedback';
import { isFar } from './isFar';
import { MirrorStage } from './MirrorStage';
import { WorkingBar } from './WorkingBar';
import './film.css';

const withoutPicture = ['resting', 'set-done', 'all-done', 'stopped'];

/** Notices wait while nobody can read them. */
const isWorking = (phase: GuidePhase) => isFar(phase) && phase !== 'placing';

/**
 * While a set is done. Near the device: what to do now over the live picture, and large buttons. Three metres away: a
 * few words as large as they go beside the picture, which shows the leg alone, and one thin bar.
 */
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
    return { side, limits: hasLiveFeedback(item) ? item.limits : null, item };
  }, [isDrawn, item, side]);
  if (view === null) return null;

  const { phase, step, pauseReason } = view;
  const isAskedWhy = pauseReason === 'stop';
  const isPlacing = phase === 'placing' && furnitureToAsk(step.item, isFurniturePlaced) === null;
  const hasPicture = findExercise(step.item.task).preparation.isFilmed && !withoutPicture.includes(phase);
  const isAway = isFar(phase) && (isPlacing || phase !== 'placing');
  return (
    <main className="film always-dark" data-phase={phase} data-split={(isAway && hasPicture) || undefined}>
      <div className="film-stage">
        {hasPicture && <MirrorStage leg={leg} isClose={isAway && !isPlacing} />}
        {!isWorking(phase) && (
          <div className="film-foot">
            {isPlacing && placing !== null && <CheckList checks={placing.checks} />}
            <FilmNotice isCalm={isPlacing} />
          </div>
        )}
      </div>
      <div className="film-say">
        <FilmCentre view={view} />
      </div>
      <div className={isAway ? 'film-dock film-dock-thin' : 'film-dock'}>
        <p className={isAway ? 'visually-hidden' : 'film-caption'} aria-live="polite">
          {phase === 'stopped' ? '' : caption}
        </p>
        {isAway ? (
          <WorkingBar view={view} />
        ) : (
          !(isAskedWhy || (isWarned && phase === 'paused')) && <FilmActions view={view} />
        )}
      </div>
    </main>
  );
}
