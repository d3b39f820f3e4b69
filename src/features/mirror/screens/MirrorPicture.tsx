import { useEffect, useRef } from 'react';
import type { MirrorState } from '../store/createMirror';
import { useMirror } from '../mirrorContext';
import { useSize } from '#ui/components/useSize';
import { drawLiveLeg } from '#ui/drawing/drawLiveLeg';
import { drawPlumbLine } from '#ui/drawing/drawPlumbLine';
import { placePicture } from '#ui/drawing/placePicture';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';

interface Props {
  camera: Extract<MirrorState['camera'], { state: 'on' }>;
  side: Side;
  limits: Limits;
}

/** Lines have to be seen from three metres. */
const thickness = 1.8;

/** The live picture, mirrored as a mirror is, with the working leg, its lane and a plumb line over the foot. */
export function MirrorPicture({ camera, side, limits }: Props) {
  const mirror = useMirror();
  const [stage, size] = useSize<HTMLDivElement>();
  const video = useRef<HTMLVideoElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const { widthPx, heightPx } = camera;
  const whole = { x: 0, y: 0, width: widthPx, height: heightPx };
  const placed = size.width === 0 ? null : placePicture(camera, whole, size);
  const shownPx = placed?.width ?? 0;

  useEffect(() => {
    const element = video.current;
    if (element === null) return;
    element.srcObject = mirror.stream();
    return () => {
      element.srcObject = null;
    };
  }, [mirror, camera, shownPx]);

  useEffect(() => {
    const target = canvas.current;
    const context = target?.getContext('2d') ?? null;
    if (target === null || context === null || shownPx === 0) return;
    return mirror.watch(({ frame, knee }) => {
      const width = Math.round(shownPx * devicePixelRatio);
      const height = Math.round((width * frame.heightPx) / frame.widthPx);
      if (target.width !== width || target.height !== height) Object.assign(target, { width, height });
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.clearRect(0, 0, target.width, target.height);
      if (frame.row === null) return;
      const scale = width / frame.widthPx;
      const unit = (thickness * frame.widthPx) / shownPx;
      context.setTransform(scale, 0, 0, scale, 0, 0);
      drawLiveLeg(context, { ...frame, row: frame.row, side, limits }, unit);
      if (knee !== null) drawPlumbLine(context, knee.foot, knee.hip.y, unit);
    });
  }, [mirror, side, limits, shownPx]);

  return (
    <div ref={stage} className="practice-picture">
      {placed !== null && (
        <div className={camera.isMirrored ? 'practice-placed is-mirrored' : 'practice-placed'} style={placed}>
          <video ref={video} autoPlay muted playsInline aria-label="What the camera sees" />
          <canvas ref={canvas} aria-hidden="true" />
        </div>
      )}
    </div>
  );
}
