import { useEffect, useMemo, useState } from 'react';
import { Button, Dialog, Modal, ModalOverlay } from 'react-aria-components';
import { tellingMeasure } from '#core/scoring/deciding';
import type { RecordingReview } from '#documents/recording/reviewSchema';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReviewState } from '../reviewContext';
import './cueShow.css';
import { createPlayhead } from './playhead';
import { repetitionAt } from './repetitionAt';
import { stillMoment } from './stillMoment';
import { usePlayhead } from './usePlayhead';
import { VideoStage } from './VideoStage';

/** Slow enough for a movement to be followed from across a room. */
const showRate = 0.5;

interface Props {
  recording: ShownRecording;
  cues: RecordingReview['cues'];
  onClose: () => void;
}

/** One repetition after another, full screen, at its worst moment, with a ring where to look and one cue in large words. */
export function CueShow({ recording, cues, onClose }: Props) {
  const limits = useReviewState((state) => state.limits);
  const judgements = useReviewState((state) => state.judgements);
  const [at, setAt] = useState(0);
  const { measurement, observed } = recording;
  const playhead = useMemo(() => createPlayhead(observed.timesMs), [observed]);
  const isPlaying = usePlayhead(playhead, (state) => state.isPlaying);
  const cue = cues[Math.min(at, cues.length - 1)];
  const index = cue === undefined ? null : repetitionAt(measurement, cue.atMs);
  const repetition = index === null ? undefined : measurement.repetitions[index];
  const judgement = index === null ? undefined : judgements[index];
  const momentMs =
    repetition === undefined || judgement === undefined
      ? null
      : stillMoment(measurement, repetition, judgement).timeMs;
  const measure = judgement === undefined ? undefined : tellingMeasure(judgement).measure;

  useEffect(() => {
    if (repetition === undefined || momentMs === null) return;
    const { timesMs } = measurement;
    if (playhead.state().isPlaying) playhead.togglePlaying();
    playhead.setRate(showRate);
    playhead.setLoop({ fromMs: timesMs[repetition.loadedFrom]!, toMs: timesMs[repetition.loadedTo]! });
    playhead.seek(momentMs);
  }, [playhead, measurement, repetition, momentMs]);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
      if (by !== undefined) setAt((from) => (from + by + cues.length) % cues.length);
      // Wherever the focus is.
      else if (event.key === 'Escape') onClose();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [cues.length, onClose]);
  // From the last to the first: a button that became disabled would lose the focus.
  const step = (by: number) => setAt((from) => (from + by + cues.length) % cues.length);
  const showMoment = () => {
    if (playhead.state().isPlaying) playhead.togglePlaying();
    if (momentMs !== null) playhead.seek(momentMs);
  };
  return (
    <ModalOverlay className="cue-overlay" isOpen onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="cue-screen always-dark">
        <Dialog className="cue-show" aria-label="Cue for the patient">
          <VideoStage
            recording={recording}
            limits={limits}
            playhead={playhead}
            isNear={measure !== 'trunk-lean'}
            ringAt={measure}
          />
          <div className="cue-words">
            <p className="cue-text" aria-live="polite">
              {cue?.text ?? ''}
            </p>
            <div className="cue-actions">
              {cues.length > 1 && (
                <Button className="button" onPress={() => step(-1)}>
                  Previous
                </Button>
              )}
              <span className="number">
                {at + 1} of {cues.length}
              </span>
              {cues.length > 1 && (
                <Button className="button" onPress={() => step(1)}>
                  Next
                </Button>
              )}
              <Button
                className="button"
                isDisabled={recording.video === null}
                onPress={playhead.togglePlaying}
              >
                {isPlaying ? 'Pause' : 'Play slowly'}
              </Button>
              <Button className="button" onPress={showMoment}>
                Show the moment
              </Button>
              <Button autoFocus className="button" onPress={onClose}>
                Close
              </Button>
            </div>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
