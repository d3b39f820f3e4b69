import { useMemo, useState } from 'react';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReviewState } from '../reviewContext';
import {
  filteredRows,
  repetitionRows,
  sortedRows,
  type RepetitionRow,
  type RowFilter,
  type SortKey,
} from '../rules/repetitionRow';

export interface TableRows {
  rows: readonly RepetitionRow[];
  /** Indexes of the repetitions as they are shown, for the keys. */
  order: readonly number[];
  sort: { key: SortKey; direction: 'ascending' | 'descending' };
  setSort: (sort: TableRows['sort']) => void;
  filter: RowFilter;
  setFilter: (filter: RowFilter) => void;
}

/** The table's rows, filtered and sorted as the user chose. */
export function useTableRows(recording: ShownRecording): TableRows {
  const judgements = useReviewState((state) => state.judgements);
  const limits = useReviewState((state) => state.limits);
  const [sort, setSort] = useState<TableRows['sort']>({ key: 'number', direction: 'ascending' });
  const [filter, setFilter] = useState<RowFilter>('all');
  const all = useMemo(
    () => repetitionRows(recording.measurement, judgements, limits, recording),
    [recording, judgements, limits],
  );
  const rows = useMemo(
    () => sortedRows(filteredRows(all, filter), sort.key, sort.direction),
    [all, filter, sort],
  );
  const order = useMemo(() => rows.map(({ index }) => index), [rows]);
  return { rows, order, sort, setSort, filter, setFilter };
}
