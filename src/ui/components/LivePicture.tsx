import { useEffect, useRef } from 'react';
import { message } from '#words/messages/message';
import type { Context2d } from '../drawing/canvasShapes';
import type { PlacedPicture } from '../drawing/placePicture';
import { useSize } from './useSize';
import './livePicture.css';

interface Size {
  widthPx: number;
  heightPx: number;
}

/**
 * Draws over the picture, replacing the previous drawing.
 *
 * @param picture  of the camera, as it was when this was seen
 * @param draw  null where there is nothing to draw. Its context's units are px of that picture, and `unit` of them make
 *   lines as thick as they must be to be seen from three metres
 */
export type PaintOver = (picture: Size, draw: ((context: Context2d, unit: number) => void) | null) => void;

interface Props {
  /** Null while there is none. */
  camera: (Size & { isMirrored: boolean }) | null;
  /** The camera's picture; looked up again with each `camera`. */
  stream: () => MediaStream | null;
  /** Lays the picture on its stage. */
  place: (picture: Size, stage: { width: number; height: number }) => PlacedPicture;
  /** Starts painting over the picture and returns a function that stops it; left out, nothing is painted. */
  overlay?: ((paint: PaintOver) => () => void) | undefined;
  className: string;
}

/** How many times thicker than over a video viewed from close by. */
const thickness = 1.8;

/** The live picture, mirrored as a mirror is, with what is drawn over it; left stays left in the data. */
export function LivePicture({ camera, stream, place, overlay, className }: Props) {
  const [stage, size] = useSize<HTMLDivElement>();
  const canvas = useRef<HTMLCanvasElement>(null);
  const placed = camera === null || size.width === 0 || size.height === 0 ? null : place(camera, size);
  const shownPx = placed?.width ?? 0;

  useEffect(() => {
    const target = canvas.current;
    const context = target?.getContext('2d') ?? null;
    if (target === null || context === null || shownPx === 0 || overlay === undefined) return;
    const clear = () => {
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.clearRect(0, 0, target.width, target.height);
    };
    const stop = overlay(({ widthPx, heightPx }, draw) => {
      const width = Math.round(shownPx * devicePixelRatio);
      const height = Math.round((width * heightPx) / widthPx);
      if (target.width !== width || target.height !== height) Object.assign(target, { width, height });
      clear();
      if (draw === null) return;
      const scale = width / widthPx;
      context.setTransform(scale, 0, 0, scale, 0, 0);
      draw(context, (thickness * widthPx) / shownPx);
    });
    return () => {
      stop();
      clear();
    };
  }, [overlay, shownPx]);

  return (
    <div ref={stage} className={className}>
      {camera !== null && placed !== null && (
        <div className={camera.isMirrored ? 'live-picture is-mirrored' : 'live-picture'} style={placed}>
          <LiveVideo camera={camera} stream={stream} />
          <canvas ref={canvas} className="fills-box" aria-hidden="true" />
        </div>
      )}
    </div>
  );
}

function LiveVideo({ camera, stream }: Pick<Props, 'camera' | 'stream'>) {
  const video = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    const element = video.current;
    if (element === null) return;
    element.srcObject = stream();
    return () => {
      element.srcObject = null;
    };
  }, [camera, stream]);
  return (
    <video ref={video} className="fills-box" autoPlay muted playsInline aria-label={message('camera.live')} />
  );
}
