import type { CountInLine } from '#core/chance/countInLine';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { locale, message } from '#words/messages/message';
import { reportFacts, type ControlFacts, type ReportCase, type ReportFacts } from './reportFacts';
import type { Report, ReportLine } from './reportLine';

/** The same weeks in plain words, in the language that is spoken: no angle, and no comparison across unlike conditions. */
export function patientReport(reported: ReportCase): Report {
  const facts = reportFacts(reported);
  const { patient, inForce } = facts;
  const limit = patient.painRule?.limit ?? inForce?.painLimit ?? null;
  const review = inForce?.reviewDate ?? null;
  const lines: (ReportLine | null)[] = [
    { head: '', text: message('report.title', { day: dayWords(new Date(reported.nowMs).toISOString()) }) },
    patient.note === '' ? null : { head: '', text: message('report.invented') },
    { head: message('report.for'), text: patient.pseudonym },
    doneLine(facts),
    painLine(facts),
    ...facts.control.map(kneeLine),
    review === null
      ? null
      : { head: message('report.next'), text: message('report.next-on', { day: dayWords(review) }) },
    limit === null ? null : { head: message('report.careful'), text: message('report.stop', { limit }) },
    { head: message('report.how'), text: message('report.how-what') },
  ];
  return lines.filter((line) => line !== null);
}

function doneLine({ done, sessions }: ReportFacts): ReportLine | null {
  if (done === null && sessions === 0) return null;
  const byWeek = done?.byWeek ?? null;
  const text =
    byWeek === null || byWeek.due === 0
      ? message('report.done-count', { done: done?.done ?? sessions })
      : message('report.done-of', { done: byWeek.done, due: byWeek.due });
  return { head: message('report.done'), text };
}

function painLine({ pain }: ReportFacts): ReportLine | null {
  if (pain === null) return null;
  const { earlier, later, difference, size } = pain.change;
  const said = new Intl.NumberFormat(locale(), { maximumFractionDigits: 1 });
  const values = { then: said.format(earlier), now: said.format(later) };
  const head = message('report.pain');
  if (size !== 'beyond-error') return { head, text: message('report.pain-same', values) };
  return { head, text: message(difference < 0 ? 'report.pain-less' : 'report.pain-more', values) };
}

function kneeLine({ task, side, change, inLine, unlikeFirst }: ControlFacts): ReportLine {
  const exercise = exerciseName(task);
  const moved = movedSentence(exercise, change, unlikeFirst !== null);
  const counted = inLine.later === null ? [] : [countSentence(inLine.later)];
  return { head: message('report.knee', { side }), text: [...moved, ...counted].join(' ') };
}

function movedSentence(exercise: string, change: ControlFacts['change'], isOtherwiseNow: boolean): string[] {
  if (change?.kind === 'compared') {
    const keys = {
      lower: 'report.knee-less',
      higher: 'report.knee-more',
      'within-error': 'report.knee-same',
    } as const;
    return [message(keys[change.change.verdict], { exercise })];
  }
  return isOtherwiseNow ? [message('report.knee-unlike', { exercise })] : [];
}

function countSentence({ low, high, chancesInLine }: CountInLine): string {
  const of = chancesInLine.length;
  return low === high ? message('report.count-all', { low, of }) : message('report.count', { low, high, of });
}
