import type { Measurement } from '#core/measurement/measurement';
import { measureIds, type MeasureId } from '#core/measures/measures';
import { findTask, type Task } from '#core/exercises/exercises';
import type { RepetitionRow, SortKey } from '../rules/repetitionRow';
import { completenessWords } from '#words/completenessWords';
import { formatMeasure, measureNames } from '#words/formatMeasure';
import { shortAngle } from '#words/formatWithBand';
import { formatTime } from '#words/formatTime';
import { reasonWords } from '#words/reasonWords';
import { formatTempo, tempo } from '#words/tempo';
import { verdictLabel } from '#words/verdictLabel';

export interface TableColumn {
  id: SortKey | 'time' | 'tempo';
  name: string;
  isNumber: boolean;
  canSort: boolean;
  /** Words of a cell; the verdict's mark is drawn by the table. */
  words: (row: RepetitionRow) => string | number;
  /** What stands in small below the words. */
  notes?: (row: RepetitionRow) => string[];
}

/** Where no measure beside the knee angle has a limit. */
const firstShown: readonly MeasureId[] = ['knee-off-line'];

/**
 * The table's columns, from left to right: few where there is little room, every measure where asked for.
 *
 * @param limited  measures that have a limit, which are shown wherever there is room
 */
export function tableColumns(
  measurement: Measurement,
  limited: readonly MeasureId[],
  isNarrow: boolean,
  hasAll: boolean,
): TableColumn[] {
  const { shape } = findTask(measurement.setup.task);
  const number = (id: SortKey, name: string, words: TableColumn['words']): TableColumn => ({
    ...{ id, name, words },
    isNumber: true,
    canSort: true,
  });
  const measure = (id: MeasureId) =>
    number(id, measureNames[id], ({ measures }) => {
      const extreme = measures[id];
      return extreme === null ? '–' : formatMeasure(id, extreme);
    });
  const isWide = !isNarrow || hasAll;
  return [
    number('number', '#', (row) => row.number),
    {
      ...{ id: 'time', name: 'Time', isNumber: false, canSort: false },
      words: ({ startMs }) => formatTime(startMs),
      notes({ index, isByHand }) {
        const lacking = completenessWords[measurement.repetitions[index]?.completeness ?? 'complete'];
        return [...(lacking === null ? [] : [lacking.short]), ...(isByHand ? ['set by hand'] : [])];
      },
    },
    {
      ...{ id: 'verdict', name: 'Verdict', isNumber: false, canSort: true },
      words: ({ judgement }) => verdictLabel(judgement, isNarrow),
      notes: ({ judgement: { reason }, excluded }) => [
        ...(reason === null ? [] : [reasonWords[reason].short]),
        ...(excluded === null ? [] : [`excluded: ${excluded}`]),
      ],
    },
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
            : (limited.length === 0 ? firstShown : limited).map(measure)),
        ]
      : []),
  ];
}

function tempoColumn({ repetitions }: Measurement, shape: Task['shape']): TableColumn {
  return {
    ...{ id: 'tempo', name: tempoHeads[shape], isNumber: true, canSort: false },
    words({ index }) {
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
