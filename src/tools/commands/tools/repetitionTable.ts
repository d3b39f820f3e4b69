import Table from 'cli-table3';
import { findTask } from '#core/exercises/exercises';
import { kneeOffLine } from '#core/measures/kneeOffLine';
import { findMeasure } from '#core/measures/measures';
import { judgementOf } from '#core/scoring/judge';
import { verdictSide } from '#core/scoring/verdict';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { completenessWords } from '#words/completenessWords';
import { formatMeasure, measureName } from '#words/formatMeasure';
import { reasonWords } from '#words/reasonWords';
import { shortCm } from '#words/shortCm';
import { formatTempo, tempo } from '#words/tempo';
import { verdictWords } from '#words/verdictWords';

type Repetition = RecordingDocument['derived']['repetitions'][number];

/** The repetitions of a recording as a text table. */
export function repetitionTable({ setup, derived }: RecordingDocument): string {
  const table = new Table({
    head: ['Repetition', 'From', 'Verdict', 'Within limits', 'Peak knee angle', 'Knee off line', 'Tempo'],
    colAligns: ['right', 'right', 'left', 'right', 'right', 'right', 'left'],
    style: { head: [], border: [], compact: true },
  });
  for (const repetition of derived.repetitions) {
    const { number, completeness, events, ranges, judgement } = repetition;
    const { extreme: angle } = judgementOf(judgement, 'knee-angle');
    const { min = null, max = null } = ranges['knee-off-line'] ?? {};
    const deviation = kneeOffLine.peak({ min, max });
    table.push([
      `${number}`,
      `${(events.startMs / 1000).toFixed(1)} s`,
      verdictText(judgement) + lacking(completeness),
      judgement.alignmentScorePct === null ? '–' : `${Math.round(judgement.alignmentScorePct)} %`,
      angle === null ? '–' : formatMeasure('knee-angle', angle),
      angle === null || deviation === null ? '–' : deviationText(deviation, setup.bodyHeightCm),
      formatTempo(tempo(repetition, findTask(setup.task).shape)),
    ]);
  }
  return table.toString();
}

function verdictText(judgement: Repetition['judgement']): string {
  const { verdict, reason, decidedBy } = judgement;
  const isNamed = verdictSide(verdict) !== 'in' && !findMeasure(decidedBy).isAlwaysLimited;
  const what = isNamed ? [measureName(decidedBy)] : [];
  const why = reason === null ? [] : [reasonWords(reason).short];
  return [verdictWords(verdict), ...what, ...why].join(': ');
}

function deviationText(deviation: { value: number; band: number }, bodyHeightCm: number | undefined): string {
  const cm = shortCm(deviation, bodyHeightCm);
  return formatMeasure('knee-off-line', deviation) + (cm === null ? '' : `, ${cm}`);
}

function lacking(completeness: Repetition['completeness']): string {
  const words = completenessWords[completeness];
  return words === null ? '' : ` (${words.short})`;
}
