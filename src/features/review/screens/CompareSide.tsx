import type { Limits } from '#core/protocol/limits';
import { judge, judgementOf } from '#core/scoring/judge';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { VerdictLabel } from '#ui/components/VerdictLabel';
import { longMeasure } from '#words/formatMeasure';
import { useReviewState } from '../reviewContext';
import type { OtherRecording } from '../store/keptReview';
import type { Playhead } from './playhead';
import { VideoStage } from './VideoStage';

export interface ComparedRepetition {
  recording: ShownRecording;
  index: number;
  /** Null for the recording that is reviewed. */
  recordingId: string | null;
}

interface Props {
  side: ComparedRepetition;
  playhead: Playhead;
  limits: Limits;
  /** 'Left' or 'Right' of the screen. */
  name: string;
  onIndex: (index: number) => void;
  /** Recordings that can be chosen instead of this one. */
  others?: readonly OtherRecording[];
  onOther?: (recordingId: string | null) => void;
}

/** One of two repetitions: which one, its picture, and its result. */
export function CompareSide({ side, playhead, limits, name, onIndex, others = [], onOther }: Props) {
  const { measurement } = side.recording;
  const repetition = measurement.repetitions[side.index];
  const sureness = useReviewState((state) => state.sureness);
  const judgement = repetition === undefined ? null : judge(repetition, measurement, limits, sureness);
  const angle = judgement === null ? null : judgementOf(judgement, 'knee-angle').extreme;
  return (
    <section className="compare-side" aria-label={`${name} picture`}>
      <header className="compare-head">
        {onOther !== undefined && others.length > 0 && (
          <select
            className="native-select"
            aria-label={`${name}: recording`}
            value={side.recordingId ?? ''}
            onChange={(event) => onOther(event.target.value === '' ? null : event.target.value)}
          >
            <option value="">This set</option>
            {others.map(({ recordingId, title }) => (
              <option key={recordingId} value={recordingId}>
                {title}
              </option>
            ))}
          </select>
        )}
        <select
          className="native-select"
          aria-label={`${name}: repetition`}
          value={side.index}
          onChange={(event) => onIndex(Number(event.target.value))}
        >
          {measurement.repetitions.map(({ number }, index) => (
            <option key={number} value={index}>
              Repetition {number}
            </option>
          ))}
        </select>
        {judgement !== null && (
          <span>
            <VerdictLabel judgement={judgement} side={measurement.setup.side} />
            {angle !== null && <span className="soft">, {longMeasure('knee-angle', angle)}</span>}
          </span>
        )}
        {repetition === undefined && <span className="soft">No repetition was found.</span>}
      </header>
      <VideoStage recording={side.recording} limits={limits} playhead={playhead} isNear canAttach={false} />
    </section>
  );
}
