import { useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import { clamp } from '#core/clamp';
import type { Point } from '#core/geometry/point';
import type { FrameLeg } from '#core/keypoints/frameLeg';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { drawLegLines } from '#ui/drawing/drawLegLines';
import { angleChangeDeg } from '../rules/jointStep';

/** Width and height of the loupe, px of the page, and how much larger it shows than the picture beside it. */
const sizePx = 150;
const times = 3;
/** Between the joint and the loupe, px. */
const gapPx = 36;

interface Props {
  recording: ShownRecording;
  /** Before the joint is moved. */
  leg: FrameLeg;
  joint: keyof FrameLeg;
  moving: Point & { handle: DOMRect; stage: DOMRect; scale: number };
  picture: () => HTMLVideoElement | null;
}

/** The picture around a joint, enlarged, beside it while it is moved, with what that does to the knee angle. */
export function Loupe({ recording, leg, joint, moving, picture }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { track, isMirrored, measurement } = recording;
  const { x, y, handle, stage, scale } = moving;
  const moved = { ...leg, [joint]: { x, y } };
  useEffect(() => {
    const target = canvas.current;
    const context = target?.getContext('2d') ?? null;
    if (target === null || context === null) return;
    const pixels = Math.round(sizePx * devicePixelRatio);
    Object.assign(target, { width: pixels, height: pixels });
    const zoom = scale * times * devicePixelRatio;
    context.setTransform(zoom, 0, 0, zoom, pixels / 2 - x * zoom, pixels / 2 - y * zoom);
    const shown = picture();
    if (shown !== null) {
      context.save();
      if (isMirrored) context.transform(-1, 0, 0, 1, track.widthPx, 0);
      context.drawImage(shown, 0, 0, track.widthPx, track.heightPx);
      context.restore();
    }
    drawLegLines(context, { ...leg, [joint]: { x, y } }, devicePixelRatio / zoom);
  });
  const isLeft = handle.left + handle.width / 2 > stage.left + stage.width / 2;
  const left = isLeft ? handle.left - gapPx - sizePx : handle.right + gapPx;
  const top = clamp(handle.top + handle.height / 2 - sizePx / 2, stage.top, stage.bottom - sizePx);
  const change = angleChangeDeg(leg, moved, measurement.setup.side);
  return createPortal(
    <div className="loupe" style={{ left, top, width: sizePx }}>
      <canvas ref={canvas} aria-hidden="true" style={{ width: sizePx, height: sizePx }} />
      <span role="status" className="small number">
        {change === null ? '' : `${Math.abs(change).toFixed(1)}° more ${change < 0 ? 'outward' : 'inward'}`}
      </span>
    </div>,
    document.body,
  );
}
