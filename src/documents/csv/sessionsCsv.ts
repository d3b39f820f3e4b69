import type { SessionDocument } from '../session/sessionDocument';
import { csvText, type Cell } from './csvText';

/** A session as far as its row needs it. */
export interface CsvSession extends Pick<
  SessionDocument,
  | 'id'
  | 'patient'
  | 'startedAt'
  | 'endedAt'
  | 'painLimit'
  | 'painBefore'
  | 'painAfter'
  | 'check'
  | 'endedBecause'
  | 'isUnfilmed'
  | 'silence'
  | 'effort'
  | 'remark'
> {
  /** ISO 8601: '2026-04-05'. */
  date: string;
  planId: string | null;
  /** The most that was said during a set; null where nothing was. */
  painDuring: number | null;
  /** The worst of the day after; null where it was not asked or answered. */
  painNextDay: number | null;
  setsDone: number;
  /** Null without a plan that is kept here. */
  setsPlanned: number | null;
  /** For demo data: that it is invented. Otherwise empty. */
  note: string;
}

type Column = readonly [name: string, cell: (session: CsvSession) => Cell];

/** Sessions as CSV, one per row, in their order; docs/data-out.md says what each column means. */
export function sessionsCsv(sessions: readonly CsvSession[]): string {
  return csvText(
    columns.map(([name]) => name),
    sessions.map((session) => columns.map(([, cell]) => cell(session))),
  );
}

const columns: readonly Column[] = [
  ['patient', ({ patient }) => patient],
  ['date', ({ date }) => date],
  ['session', ({ id }) => id],
  ['started_at', ({ startedAt }) => startedAt],
  ['ended_at', ({ endedAt }) => endedAt],
  ['plan', ({ planId }) => planId],
  ['pain_before', ({ painBefore }) => painBefore],
  ['pain_during', ({ painDuring }) => painDuring],
  ['pain_after', ({ painAfter }) => painAfter],
  ['pain_next_day', ({ painNextDay }) => painNextDay],
  ['pain_limit', ({ painLimit }) => painLimit],
  ['effort', ({ effort }) => effort],
  ['sets_done', ({ setsDone }) => setsDone],
  ['sets_planned', ({ setsPlanned }) => setsPlanned],
  ['unfilmed', ({ isUnfilmed }) => (isUnfilmed ? 'yes' : null)],
  ['ended_because', ({ endedBecause }) => endedBecause?.reason ?? null],
  ['fell', ({ endedBecause }) => yesOrNo(endedBecause?.fell ?? null)],
  ['signs', ({ check }) => (check === null ? null : check.signs.join(' '))],
  ['nothing_done_because', ({ silence }) => silence?.reason ?? null],
  ['remark', ({ remark }) => remark],
  ['note', ({ note }) => note],
];

function yesOrNo(answer: boolean | null): Cell {
  return answer === null ? null : answer ? 'yes' : 'no';
}
