import { memo } from 'react';
import type { Judgement } from '#core/scoring/judge';
import { verdicts } from '#core/scoring/verdict';
import { VerdictMark } from '#ui/components/VerdictMark';
import { verdictWords } from '#words/verdictWords';

interface Props {
  judgements: readonly Judgement[];
  /** One per repetition: why it does not count; null where it counts. */
  excluded: readonly (string | null)[];
}

/** How many repetitions got which verdict, in one line. */
export const VerdictCounts = memo(function VerdictCounts({ judgements, excluded }: Props) {
  return (
    <ul className="verdict-counts small number">
      {verdicts.map((verdict) => {
        const count = judgements.filter(
          (judgement, index) => judgement.verdict === verdict && (excluded[index] ?? null) === null,
        ).length;
        if (count === 0) return null;
        return (
          <li key={verdict} className="verdict" title={`${count} ${verdictWords(verdict)}`}>
            <VerdictMark verdict={verdict} sizePx={14} /> {count}{' '}
            <span className="verdict-count-words">{verdictWords(verdict)}</span>
          </li>
        );
      })}
    </ul>
  );
});
