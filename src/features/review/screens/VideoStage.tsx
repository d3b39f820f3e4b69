import { useEffect, useMemo, useRef, useState } from 'react';
import type { MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { nearestFrame } from '#core/scoring/nearestFrame';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useSize } from '#ui/components/useSize';
import { drawLegAt } from '#ui/drawing/drawLegAt';
import { drawRing } from '#ui/drawing/drawRing';
import { legPart } from '#ui/drawing/legPart';
import { personBox } from '#ui/drawing/personBox';
import { placePicture } from '#ui/drawing/placePicture';
import { message } from '#words/messages/message';
import { useReviewState } from '../reviewContext';
import { lookAt } from '../rules/lookAt';
import { AttachVideo } from './AttachVideo';
import { frameBox } from './frameBox';
import { JointHandles } from './JointHandles';
import type { Playhead } from './playhead';
import './stage.css';
import { usePlayhead } from './usePlayhead';

interface Props {
  recording: ShownRecording;
  limits: Limits;
  playhead: Playhead;
  /** Whether the joints in the shown frame can be moved. */
  hasHandles?: boolean;
  /** Whether the leg fills the stage. */
  isNear?: boolean;
  /** Whether a missing video is asked for. */
  canAttach?: boolean;
  /** Whether the leg and its lane are drawn over the picture. */
  isDrawnOver?: boolean;
  /** A ring is drawn where this is to be seen; left out, none is. */
  ringAt?: MeasureId | undefined;
}

/**
 * The video, zoomed in as far as the whole person still fits, with leg and lane drawn over it; without the
 * video, the drawing alone on a dark stage.
 */
export function VideoStage({
  recording,
  limits,
  playhead,
  hasHandles = false,
  isNear = false,
  canAttach = true,
  isDrawnOver = true,
  ringAt,
}: Props) {
  const { video, track } = recording;
  const [stage, { width, height }] = useSize<HTMLDivElement>();
  const { isMirrored, measurement } = recording;
  const { side } = measurement.setup;
  const picture = useRef<HTMLDivElement>(null);
  const wide = useMemo(() => (isNear ? legPart(track, side) : personBox(track)), [track, side, isNear]);
  const shownMs = usePlayhead(playhead, (state) => (hasHandles ? state.shownMs : null));
  // While joints are moved the leg fills the stage as it is in this one frame.
  const part =
    shownMs === null || width === 0 || height === 0 ? wide : frameBox(recording, shownMs, width / height);
  const shown = placePicture(track, part, { width, height });
  return (
    <div
      ref={stage}
      className="stage"
      style={{ '--picture': `${track.widthPx} / ${track.heightPx}` } as object}
    >
      <div ref={picture} className="stage-picture" style={shown}>
        {video !== null && <Picture video={video} playhead={playhead} isMirrored={isMirrored} />}
        {isDrawnOver && (
          <Overlay
            recording={recording}
            limits={limits}
            playhead={playhead}
            ringAt={ringAt}
            width={shown.width}
            height={shown.height}
          />
        )}
        {shownMs !== null && (
          <JointHandles
            recording={recording}
            timeMs={shownMs}
            picture={() => picture.current?.querySelector('video') ?? null}
          />
        )}
      </div>
      {video === null && canAttach && <AttachVideo />}
    </div>
  );
}

function Picture({ video, playhead, isMirrored }: { video: File; playhead: Playhead; isMirrored: boolean }) {
  const element = useRef<HTMLVideoElement>(null);
  const [isBroken, setIsBroken] = useState(false);
  useEffect(() => {
    const shown = element.current;
    if (shown === null) return;
    const url = URL.createObjectURL(video);
    shown.src = url;
    const letGo = playhead.follow(shown);
    return () => {
      letGo();
      shown.removeAttribute('src');
      URL.revokeObjectURL(url);
    };
  }, [video, playhead]);
  return (
    <>
      <video
        ref={element}
        className={isMirrored ? 'fills-box mirrored' : 'fills-box'}
        muted
        playsInline
        preload="auto"
        aria-label={message('replay.video')}
        onClick={playhead.togglePlaying}
        onError={() => setIsBroken(element.current?.hasAttribute('src') ?? false)}
      />
      {isBroken && <p className="stage-message">{message('replay.not-playable')}</p>}
    </>
  );
}

interface OverlayProps extends Props {
  width: number;
  height: number;
}

function Overlay({ recording, limits, playhead, ringAt, width, height }: OverlayProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const sureness = useReviewState((state) => state.sureness);
  const { track, measurement } = recording;
  useEffect(() => {
    const target = canvas.current;
    const context = target?.getContext('2d') ?? null;
    if (target === null || context === null || width === 0) return;
    target.width = Math.round(width * devicePixelRatio);
    target.height = Math.round(height * devicePixelRatio);
    const draw = () => {
      const scale = target.width / track.widthPx;
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.clearRect(0, 0, target.width, target.height);
      context.setTransform(scale, 0, 0, scale, 0, 0);
      const { shownMs } = playhead.state();
      const unit = track.widthPx / width;
      drawLegAt(context, { track, measurement, limits, sureness }, shownMs, unit);
      if (ringAt === undefined) return;
      const frame = nearestFrame(track.timesMs, shownMs);
      const point = lookAt(track, frame, ringAt, measurement.setup.side);
      if (point !== null) drawRing(context, point, unit);
    };
    draw();
    return playhead.subscribe(draw);
  }, [track, measurement, limits, sureness, playhead, ringAt, width, height]);
  return <canvas ref={canvas} className="stage-overlay fills-box" aria-hidden="true" />;
}
