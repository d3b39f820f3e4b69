import { useEffect, useMemo, useState } from 'react';
import { Button, Dialog, Modal, ModalOverlay } from 'react-aria-components';
import { clamp } from '#core/clamp';
import type { RecordingReview } from '#documents/recording/reviewSchema';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReviewState } from '../reviewContext';
import './cueShow.css';
import { createPlayhead } from './playhead';
import { repetitionAt } from './repetitionAt';
import { VideoStage } from './VideoStage';

/** Slow enough for a movement to be followed from across a room. */
const showRate = 0.5;

interface Props {
  recording: ShownRecording;
  cues: RecordingReview['cues'];
  onClose: () => void;
}

/** One repetition after another, full screen, in slow motion and looped, with one cue in large words. */
export function CueShow({ recording, cues, onClose }: Props) {
  const limits = useReviewState((state) => state.limits);
  const [at, setAt] = useState(0);
  const { measurement, observed } = recording;
  const playhead = useMemo(() => createPlayhead(observed.timesMs), [observed]);
  const cue = cues[Math.min(at, cues.length - 1)];
  const index = cue === undefined ? null : repetitionAt(measurement, cue.atMs);
  const repetition = index === null ? undefined : measurement.repetitions[index];

  useEffect(() => {
    if (repetition === undefined) return;
    const { timesMs } = measurement;
    playhead.setRate(showRate);
    playhead.setLoop({ fromMs: timesMs[repetition.loadedFrom]!, toMs: timesMs[repetition.loadedTo]! });
    playhead.seek(timesMs[repetition.loadedFrom]!);
    // The video follows the playhead only once it is on the page.
    const timer = setTimeout(() => {
      if (!playhead.state().isPlaying) playhead.togglePlaying();
    }, 100);
    return () => clearTimeout(timer);
  }, [playhead, measurement, repetition]);

  const step = (by: number) => setAt((from) => clamp(from + by, 0, cues.length - 1));
  useEffect(() => {
    const onKey = ({ key }: KeyboardEvent) => {
      const by = { ArrowRight: 1, ArrowLeft: -1 }[key];
      if (by !== undefined) setAt((from) => clamp(from + by, 0, cues.length - 1));
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [cues.length]);
  return (
    <ModalOverlay className="cue-overlay" isOpen onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="cue-screen always-dark">
        <Dialog className="cue-show" aria-label="Cue for the patient">
          <VideoStage recording={recording} limits={limits} playhead={playhead} isNear />
          <div className="cue-words">
            <p className="cue-text" aria-live="polite">
              {cue?.text ?? ''}
            </p>
            <div className="cue-actions">
              <Button className="button" isDisabled={at === 0} onPress={() => step(-1)}>
                Previous
              </Button>
              <span className="number">
                {at + 1} of {cues.length}
              </span>
              <Button className="button" isDisabled={at >= cues.length - 1} onPress={() => step(1)}>
                Next
              </Button>
              <Button className="button" onPress={playhead.togglePlaying}>
                Play or pause
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
