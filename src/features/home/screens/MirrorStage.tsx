import { useCallback, useEffect, useState } from 'react';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import type { PlanItem } from '#documents/plan/planDocument';
import { LivePicture, type PaintOver } from '#ui/components/LivePicture';
import { drawLiveLeg } from '#ui/drawing/drawLiveLeg';
import type { Box } from '#ui/drawing/legBox';
import { placePicture } from '#ui/drawing/placePicture';
import { useHome, useHomeState } from '../homeContext';
import { createLegCrop } from './createLegCrop';
import { placeLive } from './placeLive';
import { toldOf } from './toldOf';

interface Props {
  /** The working leg, drawn over the picture; left out, nothing is. */
  leg?: { side: Side; limits: Limits | null; item: PlanItem } | undefined;
  /** Whether only the leg is shown, once it is seen. */
  isClose?: boolean;
}

/** The live picture, filling the stage where it can, with the working leg over it. */
export function MirrorStage({ leg, isClose = false }: Props) {
  const home = useHome();
  const camera = useHomeState((state) => state.camera);
  const part = useLegPart(isClose ? leg?.side : undefined);
  const place = useCallback(
    (picture: { widthPx: number; heightPx: number }, stage: { width: number; height: number }) =>
      part === null ? placeLive(picture, stage) : placePicture(picture, part, stage),
    [part],
  );
  const paintLeg = useCallback(
    (paint: PaintOver) =>
      home.watchJoints(({ row, widthPx, heightPx, knee }) => {
        const told =
          knee === null || leg === undefined
            ? null
            : toldOf({ ...knee, cue: null, shortCue: null }, leg.item);
        paint(
          { widthPx, heightPx },
          row === null || leg === undefined
            ? null
            : (context, unit) => drawLiveLeg(context, { row, ...leg, knee: told }, unit),
        );
      }),
    [home, leg],
  );
  return (
    <LivePicture
      className="mirror"
      camera={camera.state === 'on' ? camera : null}
      stream={home.stream}
      place={place}
      overlay={leg === undefined ? undefined : paintLeg}
    />
  );
}

/** The part of the picture that shows this leg; null where the whole is shown. */
function useLegPart(side: Side | undefined): Box | null {
  const home = useHome();
  const [part, setPart] = useState<Box | null>(null);
  useEffect(() => {
    if (side === undefined) return;
    const crop = createLegCrop(side);
    const stop = home.watchJoints(({ row, widthPx, heightPx }) =>
      setPart(crop.push(row, { widthPx, heightPx })),
    );
    return () => {
      stop();
      setPart(null);
    };
  }, [home, side]);
  return part;
}
