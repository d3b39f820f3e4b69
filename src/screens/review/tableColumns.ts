import type { Measurement } from '../../measurement/measurement';
import { measureIds, type MeasureId } from '../../protocol/measures';
import { findTask, type Task } from '../../protocol/tasks';
import type { RepetitionRow, SortKey } from '../../review/repetitionRow';
import { formatMeasure, measureNames } from '../../words/formatMeasure';
import { shortAngle } from '../../words/formatWithBand';
import { formatTempo, tempo } from '../../words/tempo';

export interface TableColumn {
  id: SortKey | 'time' | 'tempo';
  name: string;
  isNumber: boolean;
  canSort: boolean;
  /** Words of a cell; time and verdict are drawn by the table itself. */
  cell: (row: RepetitionRow) => string | number;
}

/** The table's columns, from left to right: few where there is little room, every measure where asked for. */
export function tableColumns(measurement: Measurement, isNarrow: boolean, hasAll: boolean): TableColumn[] {
  const { shape } = findTask(measurement.setup.task);
  const number = (id: SortKey, name: string, cell: TableColumn['cell']): TableColumn => ({
    ...{ id, name, cell },
    isNumber: true,
    canSort: true,
  });
  const measure = (id: MeasureId) =>
    number(id, measureNames[id], ({ measures }) => {
      const extreme = measures[id];
      return extreme === null ? '–' : formatMeasure(id, extreme);
    });
  const none = () => '';
  const isWide = !isNarrow || hasAll;
  return [
    number('number', '#', (row) => row.number),
    { id: 'time', name: 'Time', isNumber: false, canSort: false, cell: none },
    { id: 'verdict', name: 'Verdict', isNumber: false, canSort: true, cell: none },
    number('score', 'Score', ({ judgement: { alignmentScorePct } }) =>
      alignmentScorePct === null ? '–' : `${Math.round(alignmentScorePct)} %`,
    ),
    number('worst', isNarrow ? 'Peak' : 'Peak angle', ({ judgement: { worst } }) =>
      worst === null ? '–' : shortAngle(worst),
    ),
    ...(isWide
      ? [
          number('worst-at', 'At', ({ worstAtPct }) =>
            worstAtPct === null ? '–' : `${Math.round(worstAtPct)} %`,
          ),
          number('out-of-limits', 'Out', ({ outOfLimitsMs }) =>
            outOfLimitsMs === null ? '–' : `${(outOfLimitsMs / 1000).toFixed(1)} s`,
          ),
          ...(hasAll
            ? [
                ...measureIds.map(measure),
                number('measured', 'Seen', ({ measuredPct }) => `${Math.round(measuredPct)} %`),
                tempoColumn(measurement, shape),
              ]
            : [measure('knee-off-line')]),
        ]
      : []),
  ];
}

function tempoColumn({ repetitions }: Measurement, shape: Task['shape']): TableColumn {
  return {
    ...{ id: 'tempo', name: tempoHeads[shape], isNumber: true, canSort: false },
    cell({ index }) {
      const repetition = repetitions[index];
      return repetition === undefined ? '–' : formatTempo(tempo(repetition, shape));
    },
  };
}

const tempoHeads: Record<Task['shape'], string> = {
  rise: 'Rise / top / lowering',
  dip: 'Down / up',
  reach: 'Out / back',
};
