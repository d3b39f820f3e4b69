import { Button } from 'react-aria-components';
import { formatTime } from '../../words/formatTime';
import { Terms } from '../../components/Terms';
import type { Playhead } from './playhead';
import { usePlayhead } from './usePlayhead';

const keys = [
  { term: 'Space', meaning: 'play or pause' },
  { term: '← and →', meaning: 'one frame back or on' },
  { term: '↑ and ↓', meaning: 'the repetition before or after' },
  { term: 'Ctrl + Z', meaning: 'take the last move of a limit back' },
];

interface Props {
  playhead: Playhead;
  endMs: number;
  hasVideo: boolean;
}

/** Play, step, and where the video stands. */
export function Transport({ playhead, endMs, hasVideo }: Props) {
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
      <Terms label="Keys" terms={keys} />
    </div>
  );
}

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
