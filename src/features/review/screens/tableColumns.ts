import { findTask, type Task } from '#core/exercises/exercises';
import type { Measurement } from '#core/measurement/measurement';
import { findMeasure, measureIds, type MeasureId } from '#core/measures/measures';
import { completenessWords } from '#words/completenessWords';
import { formatMeasure } from '#words/formatMeasure';
import { formatTime } from '#words/formatTime';
import { reasonWords } from '#words/reasonWords';
import { formatTempo, tempo } from '#words/tempo';
import { verdictLabel } from '#words/verdictLabel';
import type { RepetitionRow, SortKey } from '../rules/repetitionRow';

export interface TableColumn {
  id: SortKey | 'time' | 'tempo';
  name: string;
  isNumber: boolean;
  canSort: boolean;
  /** Words of a cell; the verdict's mark is drawn by the table. */
  words: (row: RepetitionRow) => string | number;
  /** Small print below the words. */
  notes?: (row: RepetitionRow) => string[];
}

const besidesKnee = measureIds.filter((id) => id !== 'knee-angle');

/**
 * The table's columns, from left to right: few where there is little room, every measure where asked for.
 *
 * @param added  measures besides the knee angle that are shown wherever there is room: those that have a limit, and the one
 *   that the plot shows
 */
export function tableColumns(
  measurement: Measurement,
  added: readonly MeasureId[],
  isNarrow: boolean,
  hasAll: boolean,
): TableColumn[] {
  const { shape } = findTask(measurement.setup.task);
  const number = (id: SortKey, name: string, words: TableColumn['words']): TableColumn => ({
    id,
    name,
    words,
    isNumber: true,
    canSort: true,
  });
  const measure = (id: MeasureId, name = findMeasure(id).name) =>
    number(id, name, ({ measures }) => {
      const extreme = measures[id];
      return extreme === null ? '–' : formatMeasure(id, extreme);
    });
  const isWide = !isNarrow || hasAll;
  return [
    number('number', '#', (row) => row.number),
    {
      id: 'time',
      name: 'Time',
      isNumber: false,
      canSort: false,
      words: ({ startMs }) => formatTime(startMs),
      notes({ index, isByHand }) {
        const lacking = completenessWords[measurement.repetitions[index]?.completeness ?? 'complete'];
        return [...(lacking === null ? [] : [lacking.short]), ...(isByHand ? ['set by hand'] : [])];
      },
    },
    {
      id: 'verdict',
      name: 'Verdict',
      isNumber: false,
      canSort: true,
      words: ({ judgement }) => verdictLabel(judgement, isNarrow),
      notes: ({ judgement: { reason }, measures, excluded, isSeenOnce }) => [
        ...(reason === null ? [] : [reasonWords(reason).short]),
        ...(measures['knee-angle']?.isAtEdge === true ? ['peak at the edge'] : []),
        ...(isSeenOnce ? ['seen once'] : []),
        ...(excluded === null ? [] : [`excluded: ${excluded}`]),
      ],
    },
    measure('knee-angle', isNarrow ? 'Peak' : 'Peak angle'),
    ...(isWide
      ? [
          ...(hasAll ? besidesKnee : added).map((id) => measure(id)),
          number('worst-at', 'Peak at', ({ worstAtPct }) =>
            worstAtPct === null ? '–' : `${Math.round(worstAtPct)} %`,
          ),
          number('out-of-limits', 'Out for', ({ outOfLimitsMs }) =>
            outOfLimitsMs === null ? '–' : `${(outOfLimitsMs / 1000).toFixed(1)} s`,
          ),
          ...(hasAll
            ? [
                number('at-deepest', 'At the deepest', ({ deepest }) =>
                  deepest === null ? '–' : formatMeasure('knee-angle', deepest),
                ),
                number('score', 'Time in line', ({ judgement: { alignmentScorePct } }) =>
                  alignmentScorePct === null ? '–' : `${Math.round(alignmentScorePct)} %`,
                ),
                number('measured', 'Seen', ({ measuredPct }) => `${Math.round(measuredPct)} %`),
                tempoColumn(measurement, shape),
              ]
            : []),
        ]
      : []),
  ];
}

function tempoColumn({ repetitions }: Measurement, shape: Task['shape']): TableColumn {
  return {
    id: 'tempo',
    name: tempoHeads[shape],
    isNumber: true,
    canSort: false,
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
