import { Fragment, useLayoutEffect, useMemo, useRef, type KeyboardEvent } from 'react';
import type { Measurement } from '#core/measurement/measurement';
import type { MeasureId } from '#core/measures/measures';
import { useIsPrinted } from '#ui/components/useIsPrinted';
import { useMediaQuery } from '#ui/components/useMediaQuery';
import type { RepetitionRow } from '../rules/repetitionRow';
import { ColumnHead } from './ColumnHead';
import { tableColumns } from './tableColumns';
import { TableRow } from './TableRow';
import { useRowWindow } from './useRowWindow';
import type { TableRows } from './useTableRows';

interface Props {
  measurement: Measurement;
  /** In the order in which they are shown. */
  rows: readonly RepetitionRow[];
  /** Their repetitions' indexes. */
  order: readonly number[];
  sort: TableRows['sort'];
  onSort: TableRows['setSort'];
  /** Measures besides the knee angle that have a limit. */
  added: readonly MeasureId[];
  /** Whether every measure has its column. */
  hasAll: boolean;
  selected: number | null;
  /** The repetition at the video's position; null between repetitions. */
  now: number | null;
  onSelect: (index: number) => void;
}

/** Repetitions with their verdicts and numbers; the selected row moves with the arrow keys. Rows out of sight are not drawn. */
export function RepetitionTable(props: Props) {
  const { measurement, rows, order, sort, onSort, added, hasAll, selected, now, onSelect } = props;
  const isNarrow = useMediaQuery('(width < 40rem), (56rem <= width < 80rem)');
  const isPrinted = useIsPrinted();
  const { side } = measurement.setup;
  const box = useRef<HTMLDivElement>(null);
  const columns = useMemo(
    () => tableColumns(measurement, added, isNarrow, hasAll),
    [measurement, added, isNarrow, hasAll],
  );
  const place = selected === null ? -1 : order.indexOf(selected);
  /** Where Tab goes. */
  const kept = Math.max(0, place);
  const { drawn, endGapPx } = useRowWindow(box, order, kept, isPrinted);

  const isMovedByKey = useRef(false);
  useLayoutEffect(() => {
    if (!isMovedByKey.current) return;
    isMovedByKey.current = false;
    box.current?.querySelector<HTMLElement>('[aria-selected="true"]')?.focus();
  }, [selected]);
  const onKeyDown = (event: KeyboardEvent) => {
    const row = (event.target as Element).closest<HTMLElement>('[data-key]');
    const from = row === null ? place : order.indexOf(Number(row.dataset['key']));
    const next = order[placeAfter(event.key, from, order.length)];
    if (next === undefined) return;
    event.preventDefault();
    isMovedByKey.current = next !== selected;
    onSelect(next);
  };

  return (
    <div ref={box} className="table-scroll">
      <table
        className="table"
        role="grid"
        aria-label="Repetitions"
        aria-rowcount={rows.length + 1}
        onKeyDown={onKeyDown}
      >
        <thead>
          <tr aria-rowindex={1}>
            {columns.map((column) => (
              <ColumnHead
                key={column.id}
                column={column}
                rows={rows}
                side={side}
                sort={sort}
                isShort={isNarrow}
                onSort={isPrinted ? undefined : onSort}
              />
            ))}
          </tr>
        </thead>
        <tbody>
          {drawn.map(({ at, gapPx }) => {
            const row = rows[at]!;
            return (
              <Fragment key={row.index}>
                <Gap heightPx={gapPx} />
                <TableRow
                  row={row}
                  columns={columns}
                  onSelect={onSelect}
                  rowIndex={at + 2}
                  side={side}
                  isShort={isNarrow}
                  isSelected={at === place}
                  isReached={at === kept}
                  isNow={row.index === now}
                />
              </Fragment>
            );
          })}
          <Gap heightPx={endGapPx} />
          {rows.length === 0 && (
            <tr>
              <td className="soft table-empty" colSpan={columns.length}>
                No repetition to show.
              </td>
            </tr>
          )}
        </tbody>
      </table>
    </div>
  );
}

/** Placeholder for rows that are not drawn. */
function Gap({ heightPx }: { heightPx: number }) {
  if (heightPx <= 0) return null;
  return (
    <tr aria-hidden="true" className="table-gap" style={{ height: heightPx }}>
      <td />
    </tr>
  );
}

/** Roughly a screenful. */
const pageRows = 8;

/** Where a key leads from a place in a table of n rows; -1 for other keys. */
function placeAfter(key: string, place: number, rows: number): number {
  switch (key) {
    case 'ArrowDown':
      return Math.min(rows - 1, place + 1);
    case 'ArrowUp':
      return Math.max(0, place - 1);
    case 'PageDown':
      return Math.min(rows - 1, place + pageRows);
    case 'PageUp':
      return Math.max(0, place - pageRows);
    case 'Home':
      return 0;
    case 'End':
      return rows - 1;
    default:
      return -1;
  }
}
