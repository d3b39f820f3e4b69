import { useEffect, useRef } from 'react';
import { useHome, useHomeState } from '../homeContext';
import { useSize } from '#ui/components/useSize';
import { drawLiveLeg } from '#ui/drawing/drawLiveLeg';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { placeLive } from './placeLive';

interface Props {
  /** The working leg, drawn over the picture; left out, nothing is. */
  leg?: { side: Side; limits: Limits | null } | undefined;
}

/** Lines have to be seen from three metres: so much thicker than over a video that is looked at closely. */
const thickness = 1.8;

/** The live picture, mirrored as a mirror is, with the working leg over it; left stays left in the data. */
export function MirrorStage({ leg }: Props) {
  const home = useHome();
  const camera = useHomeState((state) => state.camera);
  const [stage, size] = useSize<HTMLDivElement>();
  const video = useRef<HTMLVideoElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const isOn = camera.state === 'on';
  const placed = isOn ? placeLive(camera, size) : null;
  const shownPx = placed?.width ?? 0;

  useEffect(() => {
    const element = video.current;
    if (element === null) return;
    element.srcObject = home.stream();
    return () => {
      element.srcObject = null;
    };
  }, [home, camera]);

  useEffect(() => {
    const target = canvas.current;
    const context = target?.getContext('2d') ?? null;
    if (target === null || context === null || shownPx === 0 || leg === undefined) return;
    const clear = () => {
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.clearRect(0, 0, target.width, target.height);
    };
    const stop = home.watchJoints(({ row, widthPx, heightPx }) => {
      const width = Math.round(shownPx * devicePixelRatio);
      const height = Math.round((width * heightPx) / widthPx);
      if (target.width !== width || target.height !== height) Object.assign(target, { width, height });
      clear();
      if (row === null) return;
      const scale = width / widthPx;
      context.setTransform(scale, 0, 0, scale, 0, 0);
      drawLiveLeg(context, { row, widthPx, heightPx, ...leg }, (thickness * widthPx) / shownPx);
    });
    return () => {
      stop();
      clear();
    };
  }, [home, leg, shownPx]);

  return (
    <div ref={stage} className="mirror">
      {isOn && placed !== null && (
        <div className={camera.isMirrored ? 'mirror-picture is-mirrored' : 'mirror-picture'} style={placed}>
          <video ref={video} autoPlay muted playsInline aria-label="What the camera sees" />
          <canvas ref={canvas} aria-hidden="true" />
        </div>
      )}
    </div>
  );
}
