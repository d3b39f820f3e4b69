import type { Side } from '#core/protocol/side';
import { decidingWay } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import { verdictLabel } from '#words/verdictLabel';
import { picturePointing } from '../drawing/verdictForm';
import { VerdictMark } from './VerdictMark';

interface Props {
  judgement: Judgement;
  side: Side;
  /** Leaves the direction out where it is shown next to the verdict anyway. */
  isShort?: boolean;
}

/** A verdict as mark and words; out of line also says which way. */
export function VerdictLabel({ judgement, side, isShort = false }: Props) {
  const direction = decidingWay(judgement);
  return (
    <span className="verdict">
      <VerdictMark verdict={judgement.verdict} pointing={direction && picturePointing(side, direction)} />
      {verdictLabel(judgement, isShort)}
    </span>
  );
}
