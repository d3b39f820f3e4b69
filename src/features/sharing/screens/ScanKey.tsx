import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Camera } from '#device/camera/camera';
import { openCamera } from '#device/camera/openCamera';
import { openCodeReader } from '#device/camera/openCodeReader';
import { explainProblem } from '#shell/explainProblem';
import { ErrorLine } from '#ui/components/ErrorLine';

/** Between two looks at the picture, ms; our own choice, no source. */
const everyMs = 200;

/** Reads a code with the camera. The picture is shown, and not kept. */
export function ScanKey({ onRead, onClose }: { onRead: (text: string) => void; onClose: () => void }) {
  const video = useRef<HTMLVideoElement>(null);
  const read = useRef(onRead);
  const [sentence, setSentence] = useState<string | null>(null);
  const [isLooking, setLooking] = useState(false);
  useEffect(() => {
    read.current = onRead;
  });
  useEffect(() => {
    const run = { isOver: false };
    let camera: Camera | null = null;
    const look = async () => {
      const reader = await openCodeReader();
      const opened = await openCamera({ facing: 'back' });
      camera = opened;
      const element = video.current;
      if (run.isOver || element === null) return opened.close();
      opened.onEnded((problem) => setSentence(problem.message));
      element.srcObject = opened.stream;
      await element.play();
      setLooking(true);
      while (!run.isOver) {
        const text = await reader(element);
        if (text !== null && !run.isOver) return read.current(text);
        await new Promise((resume) => setTimeout(resume, everyMs));
      }
    };
    look().catch((error: unknown) => {
      if (!run.isOver) setSentence(explainProblem(error, 'open').sentence);
    });
    return () => {
      run.isOver = true;
      camera?.close();
    };
  }, []);
  return (
    <div className="scan-key">
      <video ref={video} muted playsInline aria-label="The camera’s picture" />
      <p role="status" className="small">
        {sentence === null &&
          (isLooking ? 'Hold the code of your colleague into the picture.' : 'Opening the camera …')}
      </p>
      <ErrorLine sentence={sentence} />
      <Button className="button button-quiet" onPress={onClose}>
        Without the camera
      </Button>
    </div>
  );
}
