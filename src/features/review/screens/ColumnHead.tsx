import { greatest } from 'd3-array';
import { memo } from 'react';
import type { Side } from '#core/protocol/side';
import type { RepetitionRow, SortKey } from '../rules/repetitionRow';
import { CellNotes } from './CellNotes';
import { CellWords } from './CellWords';
import type { TableColumn } from './tableColumns';
import type { TableRows } from './useTableRows';

interface Props {
  column: TableColumn;
  rows: readonly RepetitionRow[];
  side: Side;
  isShort: boolean;
  sort: TableRows['sort'];
  /** Undefined on paper, where names are repeated on every page but there are no buttons. */
  onSort: TableRows['setSort'] | undefined;
}

/** A column's name: pressing it sorts the table by it, pressing again reverses the order. */
export const ColumnHead = memo(function ColumnHead({ column, rows, side, isShort, sort, onSort }: Props) {
  const { id, name, isNumber, canSort } = column;
  const direction = sort.key === id ? sort.direction : undefined;
  const notesOf = (row: RepetitionRow) => column.notes?.(row) ?? [];
  const longest = greatest(rows, (row) => String(column.words(row)).length + notesOf(row).join('').length);
  const title = (
    <>
      {name}
      {direction !== undefined && <span aria-hidden="true">{direction === 'ascending' ? ' ↑' : ' ↓'}</span>}
    </>
  );
  return (
    <th scope="col" aria-sort={direction} className={isNumber ? 'table-number' : undefined}>
      {canSort && onSort !== undefined ? (
        <button
          type="button"
          className="table-head"
          onClick={() =>
            onSort({
              key: id as SortKey,
              direction: direction === 'ascending' ? 'descending' : 'ascending',
            })
          }
        >
          {title}
        </button>
      ) : (
        <span className="table-head">{title}</span>
      )}
      {longest !== undefined && (
        <span className="table-widest" aria-hidden="true">
          <CellWords column={column} side={side} isShort={isShort} row={longest} />
          <CellNotes notes={notesOf(longest)} />
        </span>
      )}
    </th>
  );
});
