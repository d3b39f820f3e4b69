import { useCallback } from 'react';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { LivePicture, type PaintOver } from '#ui/components/LivePicture';
import { drawLiveLeg } from '#ui/drawing/drawLiveLeg';
import { useHome, useHomeState } from '../homeContext';
import { placeLive } from './placeLive';

interface Props {
  /** The working leg, drawn over the picture; left out, nothing is. */
  leg?: { side: Side; limits: Limits | null } | undefined;
}

/** The live picture, filling the stage where it can, with the working leg over it. */
export function MirrorStage({ leg }: Props) {
  const home = useHome();
  const camera = useHomeState((state) => state.camera);
  const paintLeg = useCallback(
    (paint: PaintOver) =>
      home.watchJoints(({ row, widthPx, heightPx }) =>
        paint(
          { widthPx, heightPx },
          row === null || leg === undefined
            ? null
            : (context, unit) => drawLiveLeg(context, { row, ...leg }, unit),
        ),
      ),
    [home, leg],
  );
  return (
    <LivePicture
      className="mirror"
      camera={camera.state === 'on' ? camera : null}
      stream={home.stream}
      place={placeLive}
      overlay={leg === undefined ? undefined : paintLeg}
    />
  );
}
