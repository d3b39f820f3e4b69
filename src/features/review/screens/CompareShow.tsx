import { useEffect, useMemo, useState } from 'react';
import { Button, Dialog, Modal, ModalOverlay } from 'react-aria-components';
import type { Sureness } from '#core/chance/grade';
import type { Limits } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import { judgeAll, type ShownRecording } from '#shell/tracking/shownRecording';
import { useReview, useReviewState } from '../reviewContext';
import { countedRepetitions } from '../rules/countedRepetitions';
import { momentInStepMs, stepPctAt } from '../rules/momentInStep';
import { proposeCues } from '../rules/proposeCues';
import './compareShow.css';
import { tellingRepetition } from '../store/tellingRepetition';
import { CompareSide, type ComparedRepetition } from './CompareSide';
import { createPlayhead } from './playhead';
import { stillMoment } from './stillMoment';

/** Time in which both run through once, ms: slow enough to follow. */
const lengthMs = 6000;

interface Props {
  recording: ShownRecording;
  selected: number;
  onClose: () => void;
}

/**
 * Two repetitions side by side: first each at its worst moment, then in step, each part of the movement at the same time,
 * however long it took.
 */
export function CompareShow({ recording, selected, onClose }: Props) {
  const review = useReview();
  const limits = useReviewState((state) => state.limits);
  const judgements = useReviewState((state) => state.judgements);
  const session = useReviewState((state) => state.session);
  const sureness = useReviewState((state) => state.sureness);
  const [problem, setProblem] = useState('');
  /** Null while both show their worst moment. */
  const [stepPct, setPct] = useState<number | null>(null);
  const [isPlaying, setPlaying] = useState(false);
  const model = useMemo(() => {
    const counted = countedRepetitions(recording.measurement, judgements, recording.excluded);
    return proposeCues(counted, limits).find(({ role }) => role === 'model')?.index ?? 0;
  }, [recording, judgements, limits]);
  const [left, setLeft] = useState<ComparedRepetition>({ recording, index: selected, recordingId: null });
  const [right, setRight] = useState<ComparedRepetition>({ recording, index: model, recordingId: null });
  const pct = stepPct ?? worstPct(left, limits, sureness);
  const leftHead = useMemo(() => createPlayhead(left.recording.observed.timesMs), [left.recording]);
  const rightHead = useMemo(() => createPlayhead(right.recording.observed.timesMs), [right.recording]);

  useEffect(() => {
    for (const [side, head] of [
      [left, leftHead],
      [right, rightHead],
    ] as const) {
      const repetition = side.recording.measurement.repetitions[side.index];
      if (repetition === undefined) continue;
      const { timeMs, shownMs } = head.state();
      // While both run, a video that is still seeking the last frame is not sent to another one.
      if (isPlaying && Math.abs(timeMs - shownMs) > 80) continue;
      head.seek(
        stepPct === null
          ? worstOf(side, limits, sureness)!
          : momentInStepMs(repetition, side.recording.measurement.timesMs, stepPct),
      );
    }
  }, [left, right, leftHead, rightHead, stepPct, isPlaying, limits, sureness]);

  useEffect(() => {
    if (!isPlaying) return;
    let before = performance.now();
    const tick = (nowMs: number) => {
      const byPct = (100 * (nowMs - before)) / lengthMs;
      setPct((at) => ((at ?? 0) + byPct) % 100);
      before = nowMs;
      request = requestAnimationFrame(tick);
    };
    let request = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(request);
  }, [isPlaying]);

  const choose = async (recordingId: string | null) => {
    setProblem('');
    if (recordingId === null) return setRight({ recording, index: model, recordingId });
    try {
      const other = await review.readBeside(recordingId);
      const worst = tellingRepetition(judgeAll(other.measurement, limits, sureness), limits, other.excluded);
      setRight({ recording: other, index: worst ?? 0, recordingId });
    } catch (error) {
      setProblem(error instanceof Error ? error.message : 'That recording can’t be read.');
    }
  };
  return (
    <ModalOverlay className="cue-overlay" isOpen onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="cue-screen always-dark">
        <Dialog className="compare" aria-label="Two repetitions in step">
          <div className="compare-sides">
            <CompareSide
              side={left}
              playhead={leftHead}
              limits={limits}
              name="Left"
              onIndex={(index) => setLeft({ ...left, index })}
            />
            <CompareSide
              side={right}
              playhead={rightHead}
              limits={limits}
              name="Right"
              onIndex={(index) => setRight({ ...right, index })}
              others={session?.others ?? []}
              onOther={(recordingId) => void choose(recordingId)}
            />
          </div>
          <div className="compare-foot">
            <Button autoFocus className="button" onPress={() => setPlaying(!isPlaying)}>
              {isPlaying ? 'Pause' : 'Play both'}
            </Button>
            <input
              type="range"
              className="compare-range"
              aria-label="Position in the movement, per cent"
              min={0}
              max={100}
              step={0.5}
              value={pct}
              onChange={(event) => {
                setPlaying(false);
                setPct(Number(event.target.value));
              }}
            />
            <span className="number compare-pct">{stepPct === null ? 'worst' : `${Math.round(pct)} %`}</span>
            <Button
              className="button"
              onPress={() => {
                setPlaying(false);
                setPct(null);
              }}
            >
              Worst moments
            </Button>
            <Button className="button" onPress={onClose}>
              Close
            </Button>
            {problem !== '' && <p role="alert">{problem}</p>}
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** The worst moment of a compared repetition, ms; null where there is none. */
function worstOf(
  { recording: { measurement }, index }: ComparedRepetition,
  limits: Limits,
  sureness: Sureness,
): number | null {
  const repetition = measurement.repetitions[index];
  if (repetition === undefined) return null;
  return stillMoment(measurement, repetition, judge(repetition, measurement, limits, sureness)).timeMs;
}

/** Where in its movement that moment lies, 0 to 100 %. */
function worstPct(side: ComparedRepetition, limits: Limits, sureness: Sureness): number {
  const { measurement } = side.recording;
  const repetition = measurement.repetitions[side.index];
  const timeMs = worstOf(side, limits, sureness);
  return repetition === undefined || timeMs === null ? 0 : stepPctAt(repetition, measurement.timesMs, timeMs);
}
