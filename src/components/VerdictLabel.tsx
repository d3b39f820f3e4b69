import { picturePointing } from '../drawing/verdictForm';
import type { Side } from '../protocol/side';
import { decidingMeasure, decidingWay } from '../scoring/decidingMeasure';
import type { Judgement } from '../scoring/judge';
import { measureNames } from '../words/formatMeasure';
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
  const { verdict } = judgement;
  const direction = decidingWay(judgement);
  const measure = decidingMeasure(judgement);
  const way = verdict === 'out-of-line' && direction !== null && !isShort ? ` ${direction}` : '';
  const name =
    measure === null || verdict === 'in-line' ? '' : `: ${measureNames[measure.measure].toLowerCase()}`;
  return (
    <span className="verdict">
      <VerdictMark verdict={verdict} pointing={direction && picturePointing(side, direction)} />
      {verdictWords[verdict]}
      {way}
      {name}
    </span>
  );
}
