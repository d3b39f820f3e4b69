import { memo } from 'react';
import { Button, ToggleButton } from 'react-aria-components';
import { Terms } from '#ui/components/Terms';
import { formatTime } from '#words/formatTime';
import type { Playhead } from './playhead';
import { nextRate, rateSign, rateWords } from './playRates';
import { usePlayhead } from './usePlayhead';
import type { RepetitionActions } from './useReviewKeys';

const keys = [
  { term: 'Space', meaning: 'play or pause' },
  { term: '← and →', meaning: 'one frame back or forward' },
  { term: '↑ and ↓', meaning: 'the previous or next repetition' },
  { term: 'L', meaning: 'loop the repetition, or stop looping' },
  { term: 'S', meaning: 'slower: half, quarter, then as filmed again' },
  { term: 'W', meaning: 'the worst instant of the repetition' },
  { term: 'Ctrl + Z', meaning: 'undo the last correction or limit change' },
  { term: 'Ctrl + Shift + Z', meaning: 'redo a correction' },
  { term: 'On a handle', meaning: 'arrow keys move it, Enter sets it, Escape cancels' },
];

interface Props {
  playhead: Playhead;
  endMs: number;
  hasVideo: boolean;
  view: StageView;
  onView: (view: StageView) => void;
  /** What moves the picture along the selected repetition; null where none is selected. */
  actions: RepetitionActions | null;
}

/** How the video is shown. */
export interface StageView {
  isNear: boolean;
  hasHandles: boolean;
}

/** Play, step, and the video's position. */
export const Transport = memo(function Transport({
  playhead,
  endMs,
  hasVideo,
  view,
  onView,
  actions,
}: Props) {
  const rate = usePlayhead(playhead, (state) => state.rate);
  const isLooping = usePlayhead(playhead, (state) => state.loop !== null);
  const isPlaying = usePlayhead(playhead, (state) => state.isPlaying);
  return (
    <div className="transport no-print">
      <Button className="button button-quiet" aria-label="One frame back" onPress={() => playhead.step(-1)}>
        <Icon path="M6 5h3v14H6zM20 5v14l-9-7z" />
      </Button>
      <Button
        className="button transport-play"
        aria-label={isPlaying ? 'Pause' : 'Play'}
        isDisabled={!hasVideo}
        onPress={playhead.togglePlaying}
      >
        <Icon path={isPlaying ? 'M6 5h4v14H6zM14 5h4v14h-4z' : 'M7 4v16l13-8z'} />
      </Button>
      <Button className="button button-quiet" aria-label="One frame on" onPress={() => playhead.step(1)}>
        <Icon path="M15 5h3v14h-3zM4 5v14l9-7z" />
      </Button>
      <Clock playhead={playhead} endMs={endMs} />
      <Button
        className="button button-quiet"
        aria-label={`Speed: ${rateWords(rate)}`}
        isDisabled={!hasVideo}
        onPress={() => playhead.setRate(nextRate(rate))}
      >
        {rateSign(rate)}
      </Button>
      <ToggleButton
        className="button button-quiet"
        isSelected={isLooping}
        isDisabled={actions === null}
        onChange={() => actions?.toggleLoop()}
      >
        Loop
      </ToggleButton>
      <Button
        className="button button-quiet"
        isDisabled={actions === null}
        onPress={() => actions?.goToWorst()}
      >
        Worst
      </Button>
      <ToggleButton
        className="button button-quiet"
        isSelected={view.isNear}
        onChange={(isNear) => onView({ ...view, isNear })}
      >
        Leg
      </ToggleButton>
      <ToggleButton
        className="button button-quiet"
        aria-label="Correct joints"
        isSelected={view.hasHandles}
        onChange={(hasHandles) => onView({ ...view, hasHandles })}
      >
        Joints
      </ToggleButton>
      <Terms label="Keys" terms={keys} />
    </div>
  );
});

function Clock({ playhead, endMs }: { playhead: Playhead; endMs: number }) {
  const timeMs = usePlayhead(playhead, (state) => state.timeMs);
  return (
    <span className="transport-clock number small">
      {formatTime(timeMs)} <span className="soft">of {formatTime(endMs)}</span>
    </span>
  );
}

function Icon({ path }: { path: string }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
      <path d={path} />
    </svg>
  );
}
