import Table from 'cli-table3';
import type { SessionDocument } from '../../session/sessionDocument';
import { formatAngle } from '../../words/formatAngle';
import { formatDeviation } from '../../words/formatDeviation';
import { reasonWords } from '../../words/reasonWords';
import { verdictWords } from '../../words/verdictWords';

type Repetition = SessionDocument['derived']['repetitions'][number];

const completenessWords: Record<Repetition['completeness'], string> = {
  complete: '',
  partial: ' (not all the way)',
  'cut-at-start': ' (begins before the video)',
  'cut-at-end': ' (ends after the video)',
};

/** The repetitions of a session as a table of text. */
export function repetitionTable({ derived }: SessionDocument): string {
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
      verdictText(judgement) + completenessWords[completeness],
      judgement.alignmentScorePct === null ? '–' : `${Math.round(judgement.alignmentScorePct)} %`,
      judgement.worst === null ? '–' : formatAngle(judgement.worst.value),
      judgement.worst === null || kneeDeviation === null ? '–' : formatDeviation(kneeDeviation.value),
      tempoText(events),
    ]);
  }
  return table.toString();
}

function verdictText({ verdict, reason }: Repetition['judgement']): string {
  return reason === null ? verdictWords[verdict] : `${verdictWords[verdict]}: ${reasonWords[reason].short}`;
}

/** Seconds up, at the top and down, or down and up. */
function tempoText(events: Repetition['events']): string {
  const { startMs, seatOffMs, topMs, topEndMs, seatContactMs, bottomMs, endMs } = events;
  if (bottomMs !== null) return `${seconds(startMs, bottomMs)} down, ${seconds(bottomMs, endMs)} up`;
  if (seatOffMs === null || topMs === null || topEndMs === null || seatContactMs === null) return '–';
  return `${seconds(seatOffMs, topMs)} up, ${seconds(topMs, topEndMs)} top, ${seconds(topEndMs, seatContactMs)} down`;
}

function seconds(fromMs: number, toMs: number): string {
  return `${((toMs - fromMs) / 1000).toFixed(1)} s`;
}
