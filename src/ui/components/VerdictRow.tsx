import type { Direction } from '#core/scoring/deciding';
import { verdicts, type Verdict } from '#core/scoring/verdict';
import { message } from '#words/messages/message';
import { repetitionCount } from '#words/repetitionCount';
import { verdictWords } from '#words/verdictWords';
import { lanePointing } from '../drawing/verdictForm';
import { VerdictMark } from './VerdictMark';
import './verdictRow.css';

interface Props {
  /** In order of time. */
  marks: readonly { number: number; verdict: Verdict; direction: Direction | null }[];
}

/**
 * Repetitions as a row of marks on, at the edge of, or off the lane, up for inward; for viewing only, not
 * pressable.
 */
export function VerdictRow({ marks }: Props) {
  return (
    <span className="verdict-row" role="img" aria-label={describe(marks)}>
      {marks.map(({ number, verdict, direction }) => {
        const pointing = lanePointing(direction);
        return (
          <span
            key={number}
            className={`verdict-cell verdict-cell-${verdict} verdict-${pointing ?? 'aside'}`}
          >
            <VerdictMark verdict={verdict} pointing={pointing} sizePx={14} />
          </span>
        );
      })}
    </span>
  );
}

/** '3 repetitions: 2 in line, 1 out of line'. */
function describe(marks: Props['marks']): string {
  const counts = verdicts.flatMap((verdict) => {
    const count = marks.filter((mark) => mark.verdict === verdict).length;
    return count === 0 ? [] : [message('verdict.counted', { count, verdict: verdictWords(verdict) })];
  });
  return `${repetitionCount(marks.length)}: ${counts.join(', ')}`;
}
