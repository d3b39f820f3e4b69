import { useCallback, useMemo, useRef } from 'react';
import { Button } from 'react-aria-components';
import { useApp, useAppState, useRecording } from '../../app/AppContext';
import { AnglePlot } from '../../components/AnglePlot';
import { Message } from '../../components/Message';
import { Terms } from '../../components/Terms';
import { useMediaQuery } from '../../components/useMediaQuery';
import { DropElsewhere } from './DropElsewhere';
import { LimitsPanel } from './LimitsPanel';
import { Notes } from './Notes';
import { createPlayhead } from './playhead';
import { RepetitionPanel } from './RepetitionPanel';
import { RepetitionTable } from './RepetitionTable';
import './review.css';
import { ReviewHead } from './ReviewHead';
import { StillFigure } from './StillFigure';
import { stillMoment } from './stillMoment';
import { terms } from './terms';
import { Transport } from './Transport';
import { usePlayhead } from './usePlayhead';
import { useReviewKeys } from './useReviewKeys';
import { VerdictCounts } from './VerdictCounts';
import { viewSentence } from './viewSentence';
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
  const isStillInStage = useMediaQuery('(width >= 64rem)') && track.heightPx > track.widthPx;
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
          <div className="card review-plot">
            <PlotOverTime {...{ recording, playhead, onSelect: select }} />
            <p className="small soft">{viewSentence(measurement)}</p>
          </div>
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
                {judgements.length === 0
                  ? 'There is no repetition to look at. Check task and side above, or choose another video.'
                  : 'Choose a repetition to see its worst instant.'}
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

interface PlotProps {
  recording: NonNullable<ReturnType<typeof useRecording>>;
  playhead: ReturnType<typeof createPlayhead>;
  onSelect: (index: number) => void;
}

function PlotOverTime({ recording, playhead, onSelect }: PlotProps) {
  const limits = useAppState((state) => state.limits.present);
  const judgements = useAppState((state) => state.judgements);
  const selected = useAppState((state) => state.selected);
  const timeMs = usePlayhead(playhead, (state) => state.timeMs);
  const { measurement } = recording;
  return (
    <AnglePlot {...{ measurement, limits, judgements, selected, timeMs, onSelect, onSeek: playhead.seek }} />
  );
}

function repetitionAt(
  { repetitions, timesMs }: NonNullable<ReturnType<typeof useRecording>>['measurement'],
  timeMs: number,
): number | null {
  const index = repetitions.findIndex(
    ({ loadedFrom, loadedTo }) => timeMs >= timesMs[loadedFrom]! && timeMs <= timesMs[loadedTo]!,
  );
  return index < 0 ? null : index;
}
