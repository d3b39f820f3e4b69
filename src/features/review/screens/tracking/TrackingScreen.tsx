import { useEffect, useRef } from 'react';
import { Button, Label, ProgressBar } from 'react-aria-components';
import { useTracking, useTrackingState } from '#shell/tracking/trackingContext';
import { Brand } from '#ui/components/Brand';
import { ProgressFill } from '#ui/components/ProgressFill';
import { useFileDrop } from '#ui/components/useFileDrop';
import { message } from '#words/messages/message';
import './tracking.css';
import { timeLeftWords } from './timeLeftWords';

/** While a video is tracked: how far it is, how long it takes, and the way out. */
export function TrackingScreen() {
  const tracking = useTracking();
  const progress = useTrackingState((state) => state.progress);
  useFileDrop(() => undefined); // A file dropped now must not take the page's place.
  const done = progress?.framesDone ?? 0;
  const expected = progress?.framesExpected ?? 0;

  return (
    <div className="tracking">
      <Brand />
      <main className="card tracking-card">
        <h1>{message('tracking.title')}</h1>
        <CurrentPicture />
        <ProgressBar
          className="tracking-progress"
          value={done}
          maxValue={Math.max(1, expected)}
          isIndeterminate={progress === null}
          valueLabel={
            progress === null
              ? message('tracking.getting-ready')
              : message('tracking.frames', { done, expected })
          }
        >
          {({ percentage, valueText }) => (
            <>
              <Label className="visually-hidden">{message('tracking.progress')}</Label>
              <ProgressFill percentage={percentage} />
              <span className="number">{progress === null ? message('tracking.starting') : valueText}</span>
            </>
          )}
        </ProgressBar>
        <dl className="tracking-facts number">
          <div>
            <dt>{message('tracking.rate')}</dt>
            <dd>{progress === null ? '–' : progress.framesPerSecond.toFixed(1)}</dd>
          </div>
          <div>
            <dt>{message('tracking.left')}</dt>
            <dd>{progress === null ? '–' : timeLeftWords(progress.secondsLeft)}</dd>
          </div>
          <div>
            <dt>{message('tracking.seen')}</dt>
            <dd>
              {progress === null
                ? '–'
                : `${Math.round((100 * progress.framesWithPerson) / Math.max(1, done))} %`}
            </dd>
          </div>
        </dl>
        <Button className="button" onPress={() => tracking.cancel()}>
          {message('home.cancel')}
        </Button>
        <p className="small soft">{message('tracking.stays')}</p>
      </main>
    </div>
  );
}

/** Shortest interval between pictures shown, ms: often enough to follow, too rare to slow the work. */
const showEveryMs = 250;

function CurrentPicture() {
  const tracking = useTracking();
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    let shownMs = -Infinity;
    return tracking.watchPictures((picture) => {
      const target = canvas.current;
      if (target === null || performance.now() - shownMs < showEveryMs) return;
      shownMs = performance.now();
      if (target.width !== picture.width) target.width = picture.width;
      if (target.height !== picture.height) target.height = picture.height;
      target.getContext('2d')?.drawImage(picture, 0, 0);
    });
  }, [tracking]);
  return (
    <div className="tracking-stage">
      <canvas
        ref={canvas}
        className="fills-box"
        width="1"
        height="1"
        role="img"
        aria-label={message('tracking.frame')}
      />
    </div>
  );
}
