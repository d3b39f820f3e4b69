import { useAppState } from '../../app/AppContext';
import { AnglePlot } from '../../components/AnglePlot';
import type { Measurement } from '../../measurement/measurement';
import type { Playhead } from './playhead';
import { usePlayhead } from './usePlayhead';
import { viewSentence } from './viewSentence';

interface Props {
  measurement: Measurement;
  playhead: Playhead;
  onSelect: (index: number) => void;
}

/** The plot, following the video, and what its angles rest on. */
export function PlotOverTime({ measurement, playhead, onSelect }: Props) {
  const limits = useAppState((state) => state.limits.present);
  const judgements = useAppState((state) => state.judgements);
  const selected = useAppState((state) => state.selected);
  const timeMs = usePlayhead(playhead, (state) => state.timeMs);
  return (
    <div className="card review-plot">
      <AnglePlot
        {...{ measurement, limits, judgements, selected, timeMs, onSelect, onSeek: playhead.seek }}
      />
      <p className="small soft">{viewSentence(measurement)}</p>
    </div>
  );
}
