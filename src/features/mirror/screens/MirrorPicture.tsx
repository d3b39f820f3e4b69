import { useCallback } from 'react';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { LivePicture, type PaintOver } from '#ui/components/LivePicture';
import { drawLiveLeg } from '#ui/drawing/drawLiveLeg';
import { drawPlumbLine } from '#ui/drawing/drawPlumbLine';
import { placePicture } from '#ui/drawing/placePicture';
import { useMirror } from '../mirrorContext';
import type { MirrorState } from '../store/createMirror';
import { kneeMark } from './kneeMark';

interface Props {
  camera: Extract<MirrorState['camera'], { state: 'on' }>;
  side: Side;
  limits: Limits;
}

/** The live picture with the working leg, its lane, its knee's mark and a plumb line over the foot. */
export function MirrorPicture({ camera, side, limits }: Props) {
  const mirror = useMirror();
  const paintLeg = useCallback(
    (paint: PaintOver) =>
      mirror.watch(({ frame, knee, isOutside }) => {
        const { row } = frame;
        if (row === null) return paint(frame, null);
        paint(frame, (context, unit) => {
          drawLiveLeg(context, { row, side, limits, knee: knee && kneeMark(knee.deg, isOutside) }, unit);
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
      place={placeMirror}
      overlay={paintLeg}
    />
  );
}

/** Of an upright picture on a wide screen this share at the top, with the head, is left out, so that the leg is large. */
const headShare = 0.25;

function placeMirror(
  picture: { widthPx: number; heightPx: number },
  stage: { width: number; height: number },
) {
  const { widthPx: width, heightPx } = picture;
  const isTall = heightPx > width && stage.width > (stage.height * width) / heightPx;
  const y = isTall ? headShare * heightPx : 0;
  return placePicture(picture, { x: 0, y, width, height: heightPx - y }, stage);
}
