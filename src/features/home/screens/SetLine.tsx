import type { ReactNode } from 'react';
import { decidingWay } from '#core/scoring/deciding';
import { Message } from '#ui/components/Message';
import { VerdictRow } from '#ui/components/VerdictRow';
import type { HomeSet } from '../store/homeState';
import { doneWords, setName } from './setWords';

interface Props {
  set: HomeSet;
  /** Whether more is shown than how much was done. */
  isTold: boolean;
  children?: ReactNode;
}

/** A set of a result: how much was done, and how each repetition went. */
export function SetLine({ set, isTold, children }: Props) {
  const { problem, summary, judgements } = set;
  const marks = judgements.map((judgement, at) => ({
    number: at + 1,
    verdict: judgement.verdict,
    direction: decidingWay(judgement),
  }));
  return (
    <li>
      <span className="result-set-name">{setName(set)}</span>
      <strong>{doneWords(set, isTold)}</strong>
      {isTold && marks.length > 0 && <VerdictRow marks={marks} />}
      {isTold && summary !== null && summary.unmeasured !== null && (
        <p className="soft">{summary.unmeasured}</p>
      )}
      {problem !== null && <Message kind="caution">{problem}</Message>}
      {children}
    </li>
  );
}
