import { picturePointing } from '../drawing/verdictForm';
import type { Side } from '../protocol/side';
import type { Judgement } from '../scoring/judge';
import { verdictWords } from '../words/verdictWords';
import { VerdictMark } from './VerdictMark';

interface Props {
  judgement: Judgement;
  side: Side;
  /** Leaves the way out where it stands beside the verdict anyhow. */
  isShort?: boolean;
}

/** A verdict as mark and words; out of line also says which way. */
export function VerdictLabel({ judgement, side, isShort = false }: Props) {
  const { verdict, direction } = judgement;
  const way = verdict === 'out-of-line' && direction !== null && !isShort ? ` ${direction}` : '';
  return (
    <span className="verdict">
      <VerdictMark verdict={verdict} pointing={picturePointing(side, direction ?? 'inward')} />
      {verdictWords[verdict]}
      {way}
    </span>
  );
}
