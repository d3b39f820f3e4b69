import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { Message } from '#ui/components/Message';
import { useMediaQuery } from '#ui/components/useMediaQuery';
import { repetitionCount } from '#words/repetitionCount';
import { useRecording, useReview, useReviewState } from '../reviewContext';
import { DropElsewhere } from './DropElsewhere';
import { LimitsPanel } from './LimitsPanel';
import { createPlayhead } from './playhead';
import { PlotOverTime } from './PlotOverTime';
import { RecordingNotes } from './RecordingNotes';
import { RepetitionsCard } from './RepetitionsCard';
import { RepetitionTabs } from './RepetitionTabs';
import './review.css';
import './repetitions.css';
import './corrections.css';
import './glance.css';
import './reviewSizes.css';
import { ReviewHead } from './ReviewHead';
import { SetGlanceLine } from './SetGlanceLine';
import { StillFigure } from './StillFigure';
import { stillMoment, worstMs } from './stillMoment';
import { Transport, type StageView } from './Transport';
import { useRepetitionActions } from './useRepetitionActions';
import { useReviewKeys } from './useReviewKeys';
import { useTableRows } from './useTableRows';
import { VideoStage } from './VideoStage';

/** A measured recording: video, plot and repetitions, moving together. */
export function ReviewScreen() {
  const recording = useRecording();
  return recording === null ? null : <Review recording={recording} />;
}

function Review({ recording }: { recording: ShownRecording }) {
  const review = useReview();
  const { measurement, track, observed, video } = recording;
  const limits = useReviewState((state) => state.limits);
  const judgements = useReviewState((state) => state.judgements);
  const selected = useReviewState((state) => state.selected);
  const [view, setView] = useState<StageView>({ isNear: true, hasHandles: false });
  // Corrections never change the frames. It opens at the worst instant of the repetition that is selected.
  const playhead = useMemo(
    () => createPlayhead(observed.timesMs, worstMs(review.store.getState()) ?? undefined),
    [observed.timesMs, review],
  );
  const table = useTableRows(recording);

  const select = useCallback(
    (index: number) => {
      const repetition = measurement.repetitions[index];
      if (repetition === undefined) return;
      review.select(index);
      const fromMs = measurement.timesMs[repetition.loadedFrom]!;
      const { loop, isPlaying } = playhead.state();
      if (loop !== null) playhead.setLoop({ fromMs, toMs: measurement.timesMs[repetition.loadedTo]! });
      // Played, it is seen from its start; otherwise at its worst.
      playhead.seek(loop !== null || isPlaying ? fromMs : (worstMs(review.store.getState()) ?? fromMs));
    },
    [review, measurement, playhead],
  );
  const videoSection = useRef<HTMLElement>(null);
  const goTo = useCallback(
    (timeMs: number) => {
      playhead.seek(timeMs);
      videoSection.current?.scrollIntoView({ block: 'nearest' }); // On a phone it may be out of sight.
    },
    [playhead],
  );
  const actions = useRepetitionActions(measurement, selected, judgements, playhead, goTo);
  useReviewKeys(review, playhead, table.order, select, actions);
  const hasRoom = useMediaQuery('print, (40rem <= width < 56rem), (width >= 80rem)');
  // Close to the leg the video shows what the still would.
  const isStillInStage = hasRoom && !view.isNear && track.heightPx > track.widthPx;
  const shown = selected === null ? undefined : measurement.repetitions[selected];
  const judgement = selected === null ? undefined : judgements[selected];

  return (
    <div className="review">
      {video !== null && <DropElsewhere />}
      <ReviewHead recording={recording} />
      <section className="review-notes" aria-label="About this recording">
        <Problems />
        <RecordingNotes recording={recording} />
        <SetGlanceLine recording={recording} />
        <Opened recording={recording} />
      </section>
      <main className="review-main">
        <div className="review-left">
          <section ref={videoSection} className="review-video" aria-label="Video">
            <div className="review-pictures">
              <VideoStage recording={recording} limits={limits} playhead={playhead} {...view} />
              {isStillInStage && shown !== undefined && judgement !== undefined && (
                <StillFigure
                  recording={recording}
                  limits={limits}
                  moment={stillMoment(measurement, shown, judgement)}
                  hasHandles={view.hasHandles}
                />
              )}
            </div>
            <Transport
              playhead={playhead}
              view={view}
              actions={actions}
              onView={setView}
              endMs={observed.timesMs.at(-1) ?? 0}
              hasVideo={video !== null}
            />
          </section>
          <PlotOverTime recording={recording} playhead={playhead} onSelect={select} />
        </div>
        <div className="review-right">
          <RepetitionsCard
            recording={recording}
            table={table}
            playhead={playhead}
            selected={selected}
            onSelect={select}
          />
          <div className="card review-repetition">
            <RepetitionTabs
              recording={recording}
              selected={selected}
              playhead={playhead}
              onSeek={goTo}
              onSelect={select}
              showsStill={!isStillInStage && !view.isNear}
              hasHandles={view.hasHandles}
            />
          </div>
          <LimitsPanel />
        </div>
      </main>
    </div>
  );
}

/** Read aloud once a recording is shown. */
function Opened({ recording }: { recording: ShownRecording }) {
  const [words, setWords] = useState('');
  const { fileName } = recording;
  const count = recording.measurement.repetitions.length;
  // A region that is there with its words from the start is not read.
  useEffect(() => {
    const timer = setTimeout(() => setWords(`${fileName} is open: ${repetitionCount(count)}.`), 100);
    return () => clearTimeout(timer);
  }, [fileName, count]);
  return (
    <p role="status" className="visually-hidden">
      {words}
    </p>
  );
}

function Problems() {
  const review = useReview();
  const problem = useReviewState((state) => state.problem);
  const keeping = useReviewState((state) => state.keeping);
  return (
    <>
      {problem !== null && (
        <Message
          kind="problem"
          title={problem.title}
          actions={
            <Button className="button button-quiet" onPress={review.dismissProblem}>
              Close
            </Button>
          }
        >
          {problem.sentence}
        </Message>
      )}
      {keeping.state === 'failed' && (
        <Message kind="problem" title="Your changes were not saved on this device">
          {keeping.sentence} Save the session as a file, so that nothing is lost.
        </Message>
      )}
    </>
  );
}
