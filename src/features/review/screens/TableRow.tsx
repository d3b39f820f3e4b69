import { memo } from 'react';
import type { Side } from '#core/protocol/side';
import type { RepetitionRow } from '../rules/repetitionRow';
import { CellNotes } from './CellNotes';
import { CellWords } from './CellWords';
import type { TableColumn } from './tableColumns';

interface Props {
  row: RepetitionRow;
  columns: readonly TableColumn[];
  /** Its row number in the whole table; the header row is 1. */
  rowIndex: number;
  side: Side;
  isShort: boolean;
  isSelected: boolean;
  /** Whether Tab stops here. */
  isReached: boolean;
  /** Whether the video is within it. */
  isNow: boolean;
  onSelect: (index: number) => void;
}

/** One repetition in the table. */
export const TableRow = memo(function TableRow(props: Props) {
  const { row, columns, rowIndex, side, isShort, isSelected, isReached, isNow, onSelect } = props;
  const state = `${isNow ? ' table-row-now' : ''}${row.excluded === null ? '' : ' table-row-excluded'}`;
  return (
    <tr
      className={`table-row${state}`}
      data-key={row.index}
      tabIndex={isReached ? 0 : -1}
      aria-rowindex={rowIndex}
      aria-selected={isSelected}
      onClick={() => onSelect(row.index)}
    >
      {columns.map((column) => {
        const content = (
          <>
            <CellWords column={column} row={row} side={side} isShort={isShort} />
            <CellNotes notes={column.notes?.(row) ?? []} />
          </>
        );
        const className = column.isNumber ? 'table-number' : undefined;
        if (column.id !== 'verdict')
          return (
            <td key={column.id} className={className}>
              {content}
            </td>
          );
        return (
          <th key={column.id} scope="row">
            {content}
          </th>
        );
      })}
    </tr>
  );
});
