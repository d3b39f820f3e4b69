import { useEffect, useRef } from 'react';
import { Cell, Column, Row, Table, TableBody, TableHeader, type SortDescriptor } from 'react-aria-components';
import { useMediaQuery } from '../../components/useMediaQuery';
import { VerdictLabel } from '../../components/VerdictLabel';
import type { Measurement } from '../../measurement/measurement';
import type { RepetitionRow, SortKey } from '../../review/repetitionRow';
import { completenessWords } from '../../words/completenessWords';
import { formatTime } from '../../words/formatTime';
import { reasonWords } from '../../words/reasonWords';
import { tableColumns } from './tableColumns';

interface Props {
  measurement: Measurement;
  /** In the order in which they are shown. */
  rows: readonly RepetitionRow[];
  sort: { key: SortKey; direction: 'ascending' | 'descending' };
  onSort: (sort: Props['sort']) => void;
  /** Whether every measure has its column. */
  hasAll: boolean;
  selected: number | null;
  /** The repetition in which the video stands; null between repetitions. */
  now: number | null;
  onSelect: (index: number) => void;
}

/** Repetitions with their verdicts and numbers; the selected row moves with the arrow keys. */
export function RepetitionTable(props: Props) {
  const { measurement, rows, sort, onSort, hasAll, selected, now, onSelect } = props;
  const isNarrow = useMediaQuery('(width < 40rem), (56rem <= width < 80rem)');
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The rows come one drawing later than the table.
    const request = requestAnimationFrame(() => box.current !== null && showSelectedRow(box.current));
    return () => cancelAnimationFrame(request);
  }, [selected, measurement, rows]);
  const columns = tableColumns(measurement, isNarrow, hasAll);

  return (
    <div ref={box} className="table-scroll">
      <Table
        className="table"
        aria-label="Repetitions"
        selectionMode="single"
        selectionBehavior="replace"
        selectedKeys={selected === null ? [] : [selected]}
        sortDescriptor={{ column: sort.key, direction: sort.direction }}
        onSortChange={({ column, direction }: SortDescriptor) =>
          onSort({ key: column as SortKey, direction })
        }
        onSelectionChange={(keys) => {
          const [key] = keys === 'all' ? [] : [...keys];
          if (typeof key === 'number') onSelect(key);
        }}
      >
        <TableHeader>
          {columns.map(({ id, name, isNumber, canSort }) => (
            <Column
              key={id}
              id={id}
              isRowHeader={id === 'verdict'}
              allowsSorting={canSort}
              className={isNumber ? 'table-number' : ''}
            >
              {({ sortDirection }) => (
                <>
                  {name}
                  {sortDirection !== undefined && (
                    <span aria-hidden="true">{sortDirection === 'ascending' ? ' ↑' : ' ↓'}</span>
                  )}
                </>
              )}
            </Column>
          ))}
        </TableHeader>
        <TableBody renderEmptyState={() => <p className="soft table-empty">No repetition to show.</p>}>
          {rows.map((row) => (
            <Row
              key={row.index}
              id={row.index}
              className={rowClass(row, row.index === now)}
              textValue={`Repetition ${row.number}`}
              onPress={() => onSelect(row.index)}
            >
              {columns.map(({ id, isNumber, cell }) => (
                <Cell key={id} className={isNumber ? 'table-number' : ''}>
                  {id === 'time' ? (
                    <TimeCell row={row} measurement={measurement} />
                  ) : id === 'verdict' ? (
                    <VerdictCell row={row} measurement={measurement} isShort={isNarrow} />
                  ) : (
                    cell(row)
                  )}
                </Cell>
              ))}
            </Row>
          ))}
        </TableBody>
      </Table>
    </div>
  );
}

type CellProps = { row: RepetitionRow; measurement: Measurement };

function TimeCell({ row, measurement }: CellProps) {
  const { completeness } = measurement.repetitions[row.index] ?? { completeness: 'complete' as const };
  const lacking = completenessWords[completeness];
  return (
    <>
      {formatTime(row.startMs)}
      {lacking !== null && <span className="table-lacking">{lacking.short}</span>}
      {row.isByHand && <span className="table-lacking">set by hand</span>}
    </>
  );
}

function VerdictCell({ row, measurement, isShort }: CellProps & { isShort: boolean }) {
  const { judgement, excluded } = row;
  return (
    <>
      <VerdictLabel judgement={judgement} side={measurement.setup.side} isShort={isShort} />
      {judgement.reason !== null && (
        <span className="table-lacking">{reasonWords[judgement.reason].short}</span>
      )}
      {excluded !== null && <span className="table-lacking">excluded: {excluded}</span>}
    </>
  );
}

function rowClass({ excluded }: RepetitionRow, isNow: boolean): string {
  return `table-row${isNow ? ' table-row-now' : ''}${excluded === null ? '' : ' table-row-excluded'}`;
}

/** Scrolls the table, and nothing around it, so far that the selected row can be seen, and the first one below the head is whole. */
function showSelectedRow(box: HTMLElement): void {
  const row = box.querySelector<HTMLElement>('[aria-selected="true"]');
  if (row === null) return;
  const headPx = box.querySelector('thead')?.clientHeight ?? 0;
  const lowestPx = row.offsetTop + row.offsetHeight - box.clientHeight;
  const leastPx = Math.min(Math.max(box.scrollTop, lowestPx), row.offsetTop - headPx);
  const tops = [...box.querySelectorAll<HTMLElement>('tbody tr')].map(({ offsetTop }) => offsetTop - headPx);
  const wholePx = tops.find((topPx) => topPx >= leastPx) ?? leastPx;
  // Below the last row there has to be room for it.
  const table = box.firstElementChild as HTMLElement;
  const sparePx = Math.max(0, wholePx + box.clientHeight - table.offsetHeight);
  box.style.setProperty('--spare', leastPx > 0 ? `${sparePx}px` : '0px');
  box.scrollTop = wholePx;
}
