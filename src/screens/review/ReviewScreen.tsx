import { useCallback, useMemo, useRef } from 'react';
import { Button } from 'react-aria-components';
import { useApp, useAppState, useRecording } from '../../app/AppContext';
import { Message } from '../../components/Message';
import { Terms } from '../../components/Terms';
import { useMediaQuery } from '../../components/useMediaQuery';
import { DropElsewhere } from './DropElsewhere';
import { LimitsPanel } from './LimitsPanel';
import { Notes } from './Notes';
import { createPlayhead } from './playhead';
import { PlotOverTime } from './PlotOverTime';
import { repetitionAt } from './repetitionAt';
import { RepetitionPanel } from './RepetitionPanel';
import { RepetitionTable } from './RepetitionTable';
import './review.css';
import './repetitions.css';
import './reviewSizes.css';
import { ReviewHead } from './ReviewHead';
import { StillFigure } from './StillFigure';
import { stillMoment } from './stillMoment';
import { terms } from './terms';
import { Transport } from './Transport';
import { usePlayhead } from './usePlayhead';
import { useReviewKeys } from './useReviewKeys';
import { VerdictCounts } from './VerdictCounts';
import { VideoStage } from './VideoStage';

/** A measured recording: video, plot and repetitions, moving together. */
export function ReviewScreen() {
  const recording = useRecording();
  return recording === null ? null : <Review recording={recording} />;
}

function Review({ recording }: { recording: NonNullable<ReturnType<typeof useRecording>> }) {
  const app = useApp();
  const { measurement, track, video } = recording;
  const limits = useAppState((state) => state.limits.present);
  const judgements = useAppState((state) => state.judgements);
  const selected = useAppState((state) => state.selected);
  const problem = useAppState((state) => state.problem);
  const playhead = useMemo(() => createPlayhead(track.timesMs), [track]);

  const select = useCallback(
    (index: number) => {
      const repetition = measurement.repetitions[index];
      if (repetition === undefined) return;
      app.select(index);
      playhead.seek(measurement.timesMs[repetition.loadedFrom]!);
    },
    [app, measurement, playhead],
  );
  const videoSection = useRef<HTMLElement>(null);
  const goTo = (timeMs: number) => {
    playhead.seek(timeMs);
    videoSection.current?.scrollIntoView({ block: 'nearest' }); // On a phone it may be out of sight.
  };
  useReviewKeys(app, playhead, select);
  const now = usePlayhead(playhead, ({ timeMs }) => repetitionAt(measurement, timeMs));
  const isStillInStage = useMediaQuery('print, (width >= 80rem)') && track.heightPx > track.widthPx;
  const shown = selected === null ? undefined : measurement.repetitions[selected];
  const judgement = selected === null ? undefined : judgements[selected];

  return (
    <div className="review">
      {video !== null && <DropElsewhere />}
      <ReviewHead recording={recording} />
      <div className="review-notes">
        {problem !== null && (
          <Message
            kind="problem"
            title={problem.title}
            actions={
              <Button className="button button-quiet" onPress={app.dismissProblem}>
                Close
              </Button>
            }
          >
            {problem.sentence}
          </Message>
        )}
        <Notes recording={recording} />
      </div>
      <main className="review-main">
        <div className="review-left">
          <section ref={videoSection} className="review-video" aria-label="Video">
            <div className="review-pictures">
              <VideoStage recording={recording} limits={limits} playhead={playhead} />
              {isStillInStage && shown !== undefined && judgement !== undefined && (
                <StillFigure
                  recording={recording}
                  limits={limits}
                  moment={stillMoment(measurement, shown, judgement)}
                />
              )}
            </div>
            <Transport playhead={playhead} endMs={track.timesMs.at(-1) ?? 0} hasVideo={video !== null} />
          </section>
          <PlotOverTime {...{ measurement, playhead, onSelect: select }} />
        </div>
        <div className="review-right">
          <section className="card review-table" aria-label="Repetitions">
            <header className="review-table-head">
              <h2>Repetitions</h2>
              <VerdictCounts judgements={judgements} />
              <Terms label="What these mean" terms={terms} />
            </header>
            <RepetitionTable {...{ measurement, judgements, selected, now, onSelect: select }} />
          </section>
          <div className="card review-repetition">
            {shown === undefined || judgement === undefined ? (
              <p className="soft review-empty">
                There is no repetition to look at. Check task and side above, or choose another video.
              </p>
            ) : (
              <RepetitionPanel
                {...{ recording, limits, judgement, repetition: shown, onSeek: goTo }}
                showsStill={!isStillInStage}
              />
            )}
          </div>
          <LimitsPanel />
        </div>
      </main>
    </div>
  );
}
