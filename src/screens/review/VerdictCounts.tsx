import { VerdictMark } from '../../components/VerdictMark';
import { verdicts, type Judgement } from '../../scoring/judge';
import { verdictWords } from '../../words/verdictWords';

/** How many repetitions got which verdict, in one line. */
export function VerdictCounts({ judgements }: { judgements: readonly Judgement[] }) {
  return (
    <ul className="verdict-counts small number">
      {verdicts.map((verdict) => {
        const count = judgements.filter((judgement) => judgement.verdict === verdict).length;
        if (count === 0) return null;
        return (
          <li key={verdict} className="verdict">
            <VerdictMark verdict={verdict} sizePx={14} /> {count} {verdictWords[verdict]}
          </li>
        );
      })}
    </ul>
  );
}
