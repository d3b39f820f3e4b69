import { useEffect, useRef, useState } from 'react';
import type { Limits } from '#core/protocol/limits';
import { nearestFrame } from '#core/scoring/nearestFrame';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useSize } from '#ui/components/useSize';
import { drawLegAt } from '#ui/drawing/drawLegAt';
import type { Box } from '#ui/drawing/legBox';
import { seekTimeMs } from '#ui/drawing/seekTimeMs';
import { useReviewState } from '../reviewContext';
import { frameBox } from './frameBox';
import { JointHandles } from './JointHandles';
import { createStillReader, type StillReader } from './stillReader';

interface Props {
  recording: ShownRecording;
  limits: Limits;
  timeMs: number;
  /** Whether the joints can be moved in it. */
  hasHandles?: boolean;
}

/** The leg at one instant, cut out of the video, with its lines; without the video, the lines alone. */
export function WorstStill({ recording, limits, timeMs, hasHandles = false }: Props) {
  const { video, track, measurement, isMirrored } = recording;
  const sureness = useReviewState((state) => state.sureness);
  const [frame, { width, height }] = useSize<HTMLDivElement>();
  const canvas = useRef<HTMLCanvasElement>(null);
  const reader = useRef<StillReader>(null);
  const seen = useRef<HTMLVideoElement>(null);
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
    if (target === null || context === null || width === 0 || height === 0) return;
    const nearest = nearestFrame(track.timesMs, timeMs);
    const box = frameBox(recording, timeMs, width / height);
    const draw = (picture: HTMLVideoElement | null) => {
      seen.current = picture;
      target.width = Math.round(width * devicePixelRatio);
      target.height = Math.round(height * devicePixelRatio);
      const scale = target.width / box.width;
      context.setTransform(scale, 0, 0, scale, -box.x * scale, -box.y * scale);
      if (picture !== null) {
        context.save();
        if (isMirrored) context.transform(-1, 0, 0, 1, track.widthPx, 0);
        context.drawImage(picture, 0, 0, track.widthPx, track.heightPx);
        context.restore();
      }
      drawLegAt(context, { track, measurement, limits, sureness }, timeMs, box.width / width);
      setHasFailed(picture === null && video !== null);
    };
    if (reader.current === null) draw(null);
    else
      reader.current.read(
        seekTimeMs(track.timesMs, nearest),
        (picture) => draw(picture),
        () => draw(null),
      );
  }, [recording, video, track, measurement, isMirrored, limits, sureness, timeMs, width, height]);

  const box = width === 0 || height === 0 ? null : frameBox(recording, timeMs, width / height);
  return (
    <div ref={frame} className="still">
      <canvas
        ref={canvas}
        className="fills-box"
        role="img"
        aria-label="The leg at this instant, with its lane"
      />
      {hasHandles && box !== null && (
        <div className="still-whole" style={wholeOf(box, track, width)}>
          <JointHandles recording={recording} timeMs={timeMs} picture={() => seen.current} />
        </div>
      )}
      {hasFailed && (
        <p className="still-message small">The picture could not be read; only the lines are drawn.</p>
      )}
    </div>
  );
}

/** Where the whole picture lies behind the part that is shown, px. */
function wholeOf(box: Box, { widthPx, heightPx }: ShownRecording['track'], width: number) {
  const scale = width / box.width;
  return { left: -box.x * scale, top: -box.y * scale, width: widthPx * scale, height: heightPx * scale };
}
