import { useEffect, useState } from 'react';
import { clamp } from '#core/clamp';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { VerdictMark } from '#ui/components/VerdictMark';
import { picturePointing } from '#ui/drawing/verdictForm';
import { useMirror } from '../mirrorContext';
import type { MirrorSight } from '../store/createMirror';
import { kneeMark } from './kneeMark';

/** Range of the bar to either side, degrees. */
const rangeDeg = 35;

interface Props {
  side: Side;
  limits: Limits;
  isMirrored: boolean;
}

/** How far the knee is to either side, against the band of its limits; it moves the way the knee does in the mirror. */
export function KneeBar({ side, limits, isMirrored }: Props) {
  const mirror = useMirror();
  const [sight, setSight] = useState<MirrorSight | null>(null);
  useEffect(() => mirror.watch(setSight), [mirror]);
  // In the picture the left leg's inside is to the left; a mirror turns that round.
  const inwardSign = (side === 'left' ? -1 : 1) * (isMirrored ? -1 : 1);
  const place = (deg: number) => 50 + (50 * inwardSign * clamp(deg, -rangeDeg, rangeDeg)) / rangeDeg;
  const { least, most } = limits['knee-angle'];
  const edges = [place(most), place(least)];
  const knee = sight?.knee ?? null;
  const mark = knee === null ? null : kneeMark(knee.deg, sight?.isOutside ?? false);
  const words =
    knee === null
      ? 'Not measured: show the whole leg from the front'
      : sight?.isOutside
        ? `The knee is ${knee.deg > 0 ? 'inward' : 'outward'} of its lane`
        : 'In the lane';
  return (
    <div className="knee-bar">
      <div className="knee-bar-track">
        <div
          className="knee-bar-lane"
          style={{ left: `${Math.min(...edges)}%`, right: `${100 - Math.max(...edges)}%` }}
        />
        {knee !== null && mark !== null && (
          <div className="knee-bar-dot" style={{ left: `${place(knee.deg)}%` }}>
            <VerdictMark
              verdict={mark.verdict}
              pointing={picturePointing(side, mark.direction ?? 'inward', isMirrored)}
              sizePx={44}
            />
          </div>
        )}
      </div>
      <p className="knee-bar-words">{words}</p>
    </div>
  );
}
