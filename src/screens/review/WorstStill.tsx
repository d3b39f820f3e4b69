import { useEffect, useRef, useState } from 'react';
import type { useRecording } from '../../app/AppContext';
import { drawLegAt } from '../../drawing/drawLegAt';
import { frameLeg } from '../../drawing/frameLeg';
import { legBox } from '../../drawing/legBox';
import { nearestFrame } from '../../drawing/nearestFrame';
import { seekTimeMs } from '../../drawing/seekTimeMs';
import type { Limits } from '../../protocol/limits';
import { createStillReader, type StillReader } from './stillReader';

interface Props {
  recording: NonNullable<ReturnType<typeof useRecording>>;
  limits: Limits;
  timeMs: number;
}

/** Size of the still on the screen, px. */
const size = { width: 190, height: 260 };

/** The leg at one instant, cut out of the video, with its lines; without the video, the lines alone. */
export function WorstStill({ recording, limits, timeMs }: Props) {
  const { video, track, measurement } = recording;
  const canvas = useRef<HTMLCanvasElement>(null);
  const reader = useRef<StillReader>(null);
  const [hasFailed, setHasFailed] = useState(false);

  useEffect(() => {
    if (video === null) return;
    const opened = createStillReader(video);
    reader.current = opened;
    return () => {
      opened.close();
      reader.current = null;
    };
  }, [video]);

  useEffect(() => {
    const target = canvas.current;
    const context = target?.getContext('2d') ?? null;
    if (target === null || context === null) return;
    const draw = (picture: HTMLVideoElement | null) => {
      const frame = nearestFrame(track.timesMs, timeMs);
      const leg = frameLeg(track, frame, measurement.setup.side);
      const box = legBox(leg, track, size.width / size.height);
      const scale = target.width / box.width;
      context.setTransform(scale, 0, 0, scale, -box.x * scale, -box.y * scale);
      context.clearRect(box.x, box.y, box.width, box.height);
      if (picture !== null) context.drawImage(picture, 0, 0, track.widthPx, track.heightPx);
      drawLegAt(context, { track, measurement, limits }, timeMs, box.width / size.width);
    };
    if (reader.current === null) return draw(null);
    const onPicture = (picture: HTMLVideoElement) => {
      setHasFailed(false);
      draw(picture);
    };
    const onFailure = () => {
      setHasFailed(true);
      draw(null);
    };
    reader.current.read(seekTimeMs(track.timesMs, nearestFrame(track.timesMs, timeMs)), onPicture, onFailure);
  }, [video, track, measurement, limits, timeMs]);

  return (
    <>
      <canvas
        ref={canvas}
        className="still"
        width={size.width * 2}
        height={size.height * 2}
        role="img"
        aria-label="The leg at this instant, with its lane"
      />
      {hasFailed && (
        <p className="small soft">The picture could not be read; the lines are drawn without it.</p>
      )}
    </>
  );
}
