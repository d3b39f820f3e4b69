import type { ShownRecording } from '#shell/tracking/shownRecording';
import { MeasurePlot } from '#ui/components/MeasurePlot';
import { Terms } from '#ui/components/Terms';
import { useReview, useReviewState } from '../reviewContext';
import { middleMs } from './correctionChoices';
import { lookSentence } from './lookSentence';
import { MeasureChoice } from './MeasureChoice';
import type { Playhead } from './playhead';
import { usePlayhead } from './usePlayhead';
import { viewSentence } from './viewSentence';

interface Props {
  recording: ShownRecording;
  playhead: Playhead;
  onSelect: (index: number) => void;
}

/** The plot, following the video, and what its angles are based on. */
export function PlotOverTime({ recording, playhead, onSelect }: Props) {
  const { measurement } = recording;
  const review = useReview();
  const limits = useReviewState((state) => state.limits);
  const measure = useReviewState((state) => state.measure);
  const judgements = useReviewState((state) => state.judgements);
  const selected = useReviewState((state) => state.selected);
  const timeMs = usePlayhead(playhead, (state) => state.timeMs);
  const shown = selected === null ? undefined : measurement.repetitions[selected];
  const edges =
    shown === undefined || selected === null
      ? null
      : {
          number: shown.number,
          startMs: measurement.timesMs[shown.loadedFrom]!,
          endMs: measurement.timesMs[shown.loadedTo]!,
          stepMs: 1000 / measurement.rateHz,
          onMove: (edge: 'start' | 'end', toMs: number) =>
            review.correct({ kind: 'move-edge', atMs: middleMs(measurement, selected), edge, toMs }),
        };
  return (
    <div className="card review-plot">
      <MeasurePlot
        measure={measure}
        measurement={measurement}
        limits={limits}
        judgements={judgements}
        selected={selected}
        timeMs={timeMs}
        onSelect={onSelect}
        edges={edges}
        onSeek={playhead.seek}
      >
        <MeasureChoice />
        <Terms
          label="About the angle"
          terms={[
            { term: 'The view', meaning: viewSentence(measurement) },
            { term: 'The joints', meaning: lookSentence(recording) },
          ]}
        />
      </MeasurePlot>
    </div>
  );
}
