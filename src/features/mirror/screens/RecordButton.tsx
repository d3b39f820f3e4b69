import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { formatTime } from '#words/formatTime';
import { useMirror, useMirrorState } from '../mirrorContext';

/** Begins a recording of what the mirror sees, and ends it. */
export function RecordButton() {
  const mirror = useMirror();
  const recording = useMirrorState((state) => state.recording);
  switch (recording.state) {
    case 'done':
      return null;
    case 'running':
      return (
        <Button className="button button-primary" onPress={mirror.stopRecording}>
          Stop recording, <Elapsed fromMs={recording.fromMs} />
        </Button>
      );
    default:
      return (
        <Button className="button" onPress={mirror.record}>
          Record
        </Button>
      );
  }
}

function Elapsed({ fromMs }: { fromMs: number }) {
  const [nowMs, setNowMs] = useState(fromMs);
  useEffect(() => {
    const timer = setInterval(() => setNowMs(Date.now()), 1000);
    return () => clearInterval(timer);
  }, []);
  return formatTime(1000 * Math.max(0, Math.round((nowMs - fromMs) / 1000)));
}
