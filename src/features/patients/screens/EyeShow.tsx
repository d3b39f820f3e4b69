import { useCallback, useEffect, useId, useMemo, useState, type FormEvent } from 'react';
import { Button, Dialog, Modal, ModalOverlay } from 'react-aria-components';
import type { OwnEyeRecord } from '#documents/patient/caseEntries';
import { longestPatientText } from '#documents/patient/patientDocument';
import '#features/review/screens/cueShow.css';
import { createPlayhead } from '#features/review/screens/playhead';
import { usePlayhead } from '#features/review/screens/usePlayhead';
import { VideoStage } from '#features/review/screens/VideoStage';
import { useInitials } from '#features/sharing/screens/useInitials';
import { limitsWords } from '../rules/courseWords';
import type { EyeSet } from '../store/readEyeSet';

type Answer = OwnEyeRecord['answers'][number]['verdict'] | 'skipped';

interface Props {
  set: EyeSet;
  /** Called with what was judged, in order, and the initials. */
  onKeep: (answers: OwnEyeRecord['answers'], by: string) => void;
  onClose: () => void;
}

/** One repetition after another, full screen, without anything that was measured, to be judged by eye. */
export function EyeShow({ set, onKeep, onClose }: Props) {
  const { recording, limits, repetitions } = set;
  const [given, setGiven] = useState<readonly Answer[]>([]);
  const playhead = useMemo(() => createPlayhead(recording.observed.timesMs), [recording]);
  const isPlaying = usePlayhead(playhead, (state) => state.isPlaying);
  const at = given.length;
  const repetition = repetitions[at];

  useEffect(() => {
    if (repetition === undefined) {
      if (playhead.state().isPlaying) playhead.togglePlaying();
      return;
    }
    const { fromMs, toMs } = repetition;
    playhead.setLoop({ fromMs, toMs });
    playhead.seek(fromMs);
    if (!playhead.state().isPlaying) playhead.togglePlaying();
  }, [playhead, repetition]);

  const answer = useCallback(
    (verdict: Answer) =>
      setGiven((before) => (before.length < repetitions.length ? [...before, verdict] : before)),
    [repetitions],
  );
  const takeBack = useCallback(() => setGiven((before) => before.slice(0, -1)), []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key === 'i') answer('in');
      else if (key === 'o') answer('out');
      else if (key === 's') answer('skipped');
      else if (key === 'backspace') takeBack();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [answer, takeBack]);

  const answers = given.flatMap((verdict, place) =>
    verdict === 'skipped' ? [] : [{ repetition: repetitions[place]!.index, verdict }],
  );
  return (
    <ModalOverlay className="cue-overlay" isOpen onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="cue-screen always-dark">
        <Dialog className="cue-show" aria-label="Judge by eye">
          <VideoStage recording={recording} limits={limits} playhead={playhead} isNear isDrawnOver={false} />
          <div className="cue-words">
            <div className="eye-question">
              {repetition === undefined ? (
                <KeepForm answers={answers} left={given.length - answers.length} onKeep={onKeep} />
              ) : (
                <>
                  <p className="eye-count" role="status">
                    Repetition {at + 1} of {repetitions.length}
                  </p>
                  <p>
                    Did the {recording.measurement.setup.side} knee stay in line? In line is up to{' '}
                    {limitsWords(limits['knee-angle'])}, against how this person stands.
                  </p>
                  <div className="button-row">
                    <Button autoFocus className="button button-primary" onPress={() => answer('in')}>
                      In line (I)
                    </Button>
                    <Button className="button button-primary" onPress={() => answer('out')}>
                      Out of line (O)
                    </Button>
                    <Button className="button" onPress={() => answer('skipped')}>
                      Skip (S)
                    </Button>
                  </div>
                </>
              )}
            </div>
            <div className="cue-actions">
              <Button className="button" isDisabled={at === 0} onPress={takeBack}>
                Take back the last (Backspace)
              </Button>
              {repetition !== undefined && (
                <Button className="button" onPress={playhead.togglePlaying}>
                  {isPlaying ? 'Pause' : 'Play'}
                </Button>
              )}
              <Button className="button" onPress={onClose}>
                Close without keeping
              </Button>
            </div>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function KeepForm({
  answers,
  left,
  onKeep,
}: Pick<Props, 'onKeep'> & { answers: OwnEyeRecord['answers']; left: number }) {
  const field = useId();
  const { by, setBy, remember } = useInitials();
  const [lacks, setLacks] = useState<string | null>(null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (by.trim() === '') return setLacks('Sign with your initials.');
    remember(by);
    onKeep(answers, by.trim());
  };
  if (answers.length === 0)
    return <p role="status">All repetitions were skipped, so there is nothing to keep.</p>;
  return (
    <form className="eye-keep" onSubmit={submit}>
      <p className="eye-count" role="status">
        {answers.length} judged{left === 0 ? '' : `, ${left} skipped`}
      </p>
      <label htmlFor={field}>Your initials</label>
      <input
        id={field}
        autoFocus
        className="text-input programme-initials"
        value={by}
        maxLength={longestPatientText.by}
        onChange={({ target }) => setBy(target.value)}
      />
      {lacks !== null && <p role="alert">{lacks}</p>}
      <div className="button-row">
        <Button className="button button-primary" type="submit">
          Keep, and compare
        </Button>
      </div>
    </form>
  );
}
