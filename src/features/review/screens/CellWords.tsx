import type { Side } from '#core/protocol/side';
import { VerdictLabel } from '#ui/components/VerdictLabel';
import type { RepetitionRow } from '../rules/repetitionRow';
import type { TableColumn } from './tableColumns';

interface Props {
  column: TableColumn;
  row: RepetitionRow;
  side: Side;
  /** Whether there is little room. */
  isShort: boolean;
}

/** What a cell says, without its notes. */
export function CellWords({ column, row, side, isShort }: Props) {
  if (column.id === 'verdict')
    return <VerdictLabel judgement={row.judgement} side={side} isShort={isShort} />;
  return column.words(row);
}
