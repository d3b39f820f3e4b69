import { useCallback } from 'react';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { LivePicture, type PaintOver } from '#ui/components/LivePicture';
import { drawLiveLeg } from '#ui/drawing/drawLiveLeg';
import { drawPlumbLine } from '#ui/drawing/drawPlumbLine';
import { placePicture } from '#ui/drawing/placePicture';
import { useMirror } from '../mirrorContext';
import type { MirrorState } from '../store/createMirror';

interface Props {
  camera: Extract<MirrorState['camera'], { state: 'on' }>;
  side: Side;
  limits: Limits;
}

/** The whole live picture with the working leg, its lane and a plumb line over the foot. */
export function MirrorPicture({ camera, side, limits }: Props) {
  const mirror = useMirror();
  const paintLeg = useCallback(
    (paint: PaintOver) =>
      mirror.watch(({ frame, knee }) => {
        const { row } = frame;
        if (row === null) return paint(frame, null);
        paint(frame, (context, unit) => {
          drawLiveLeg(context, { row, side, limits }, unit);
          if (knee !== null) drawPlumbLine(context, knee.foot, knee.hip.y, unit);
        });
      }),
    [mirror, side, limits],
  );
  return (
    <LivePicture
      className="live-mirror-picture"
      camera={camera}
      stream={mirror.stream}
      place={placeWhole}
      overlay={paintLeg}
    />
  );
}

function placeWhole(
  picture: { widthPx: number; heightPx: number },
  stage: { width: number; height: number },
) {
  const whole = { x: 0, y: 0, width: picture.widthPx, height: picture.heightPx };
  return placePicture(picture, whole, stage);
}
