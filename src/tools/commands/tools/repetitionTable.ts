import Table from 'cli-table3';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { findTask } from '#core/exercises/exercises';
import { decidingMeasure } from '#core/scoring/decidingMeasure';
import { completenessWords } from '#words/completenessWords';
import { formatMeasure, measureNames } from '#words/formatMeasure';
import { shortAngle, shortCm } from '#words/formatWithBand';
import { reasonWords } from '#words/reasonWords';
import { formatTempo, tempo } from '#words/tempo';
import { verdictWords } from '#words/verdictWords';

type Repetition = RecordingDocument['derived']['repetitions'][number];

/** The repetitions of a session as a table of text. */
export function repetitionTable({ setup, derived }: RecordingDocument): string {
  const table = new Table({
    head: ['Repetition', 'From', 'Verdict', 'Within limits', 'Peak knee angle', 'Knee off line', 'Tempo'],
    colAligns: ['right', 'right', 'left', 'right', 'right', 'right', 'left'],
    style: { head: [], border: [], compact: true },
  });
  for (const repetition of derived.repetitions) {
    const { number, completeness, events, judgement, kneeDeviation } = repetition;
    table.push([
      `${number}`,
      `${(events.startMs / 1000).toFixed(1)} s`,
      verdictText(judgement) + lacking(completeness),
      judgement.alignmentScorePct === null ? '–' : `${Math.round(judgement.alignmentScorePct)} %`,
      judgement.worst === null ? '–' : shortAngle(judgement.worst),
      judgement.worst === null || kneeDeviation === null
        ? '–'
        : deviationText(kneeDeviation, setup.bodyHeightCm),
      formatTempo(tempo(repetition, findTask(setup.task).shape)),
    ]);
  }
  return table.toString();
}

function verdictText(judgement: Repetition['judgement']): string {
  const { verdict, reason } = judgement;
  const measure = verdict === 'in-line' ? null : decidingMeasure(judgement);
  const what = measure === null ? [] : [measureNames[measure.measure].toLowerCase()];
  const why = reason === null ? [] : [reasonWords[reason].short];
  return [verdictWords[verdict], ...what, ...why].join(': ');
}

function deviationText(deviation: { value: number; band: number }, bodyHeightCm: number | undefined): string {
  const cm = shortCm(deviation, bodyHeightCm);
  return formatMeasure('knee-off-line', deviation) + (cm === null ? '' : `, ${cm}`);
}

function lacking(completeness: Repetition['completeness']): string {
  const words = completenessWords[completeness];
  return words === null ? '' : ` (${words.short})`;
}
