import { useEffect, useRef } from 'react';
import { Button, Label, ProgressBar } from 'react-aria-components';
import { useTracking, useTrackingState } from '#shell/tracking/trackingContext';
import { Brand } from '#ui/components/Brand';
import { ProgressFill } from '#ui/components/ProgressFill';
import { useFileDrop } from '#ui/components/useFileDrop';
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
        <h1>Finding the joints in every frame</h1>
        <CurrentPicture />
        <ProgressBar
          className="tracking-progress"
          value={done}
          maxValue={Math.max(1, expected)}
          isIndeterminate={progress === null}
          valueLabel={progress === null ? 'Getting ready' : `${done} of ${expected} frames`}
        >
          {({ percentage, valueText }) => (
            <>
              <Label className="visually-hidden">Progress</Label>
              <ProgressFill percentage={percentage} />
              <span className="number">
                {progress === null ? 'Getting the body finder ready …' : valueText}
              </span>
            </>
          )}
        </ProgressBar>
        <dl className="tracking-facts number">
          <div>
            <dt>Frames per second</dt>
            <dd>{progress === null ? '–' : progress.framesPerSecond.toFixed(1)}</dd>
          </div>
          <div>
            <dt>Time left</dt>
            <dd>{progress === null ? '–' : timeLeftWords(progress.secondsLeft)}</dd>
          </div>
          <div>
            <dt>Person seen in</dt>
            <dd>
              {progress === null
                ? '–'
                : `${Math.round((100 * progress.framesWithPerson) / Math.max(1, done))} %`}
            </dd>
          </div>
        </dl>
        <Button className="button" onPress={() => tracking.cancel()}>
          Cancel
        </Button>
        <p className="small soft">
          Nothing leaves this device. Keep this page in front: in the background the browser slows it down.
        </p>
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
        aria-label="The frame being analysed now"
      />
    </div>
  );
}
