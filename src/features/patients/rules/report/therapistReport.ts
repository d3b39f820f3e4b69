import { restrictionWords, untilWords } from '#documents/patient/restrictionWords';
import { doseWords } from '#documents/plan/itemFacts';
import { itemName } from '#documents/plan/itemName';
import { perWeekSentence } from '#documents/plan/perWeekSentence';
import { capitalised } from '#words/capitalised';
import { changeSentences, noImportantChange, painSentence, sideSentence } from '#words/changeSentences';
import { conditionSentences } from '#words/conditionSentences';
import { dateInWords, dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { oneDecimal } from '#words/oneDecimal';
import { countRange } from '#words/setCountWords';
import { signWords } from '#words/signWords';
import { redFlagsSentences } from '../caseWords';
import { conditionsWords, limitsWords } from '../courseWords';
import { dueWords } from '../dueAndDone';
import { onsetWords, sideWords, siteWords } from '../patientWords';
import { proposedLines } from '../programmeWords';
import { reportFacts, type ControlFacts, type ReportCase, type ReportFacts } from './reportFacts';
import type { Report, ReportLine } from './reportLine';

/** Says the least about everything that a report is not. */
const closing: ReportLine = {
  head: 'What it is not',
  text:
    'No diagnosis, no load, no statement on the risk of injury or on going back to sport; not a certified medical ' +
    'device. What the treating professional says comes first.',
};

/** A patient's weeks in a few lines, for the record and for colleagues; lines without data are left out. */
export function therapistReport(reported: ReportCase): Report {
  const facts = reportFacts(reported);
  const { patient } = facts;
  const lines: (ReportLine | null)[] = [
    { head: '', text: `Knee control programme, report of ${dayOf(reported.nowMs)}` },
    patient.note === '' ? null : { head: '', text: patient.note },
    { head: 'Patient', text: `${patient.pseudonym} (pseudonym)${spanWords(facts)}` },
    reasonLine(facts),
    signsLine(facts),
    programmeLine(facts),
    doneLine(facts),
    painLine(facts),
    ...facts.control.map((control, index) =>
      controlLine(control, index === facts.control.length - 1 ? facts.notReported : []),
    ),
    sidesLine(facts),
    nextLine(reported),
    methodLine(facts),
    closing,
  ];
  return lines.filter((line) => line !== null);
}

const dayOf = (atMs: number) => dayWords(new Date(atMs).toISOString());
/** Words that somebody wrote stand in quotes. */
const quoted = (text: string) => (/[.!?…]$/.test(text) ? `“${text}”` : `“${text}”.`);

function spanWords({ fromMs, untilMs }: ReportFacts): string {
  if (fromMs === null || untilMs === null) return '';
  return fromMs === untilMs ? `, one session on ${dayOf(fromMs)}` : `, ${dayOf(fromMs)} to ${dayOf(untilMs)}`;
}

function reasonLine({ patient, prescribed }: ReportFacts): ReportLine | null {
  const { painfulSide, sites, since, onset, goals, restrictions, surgery } = patient;
  const where = [
    ...(painfulSide === null ? [] : [sideWords[painfulSide]]),
    ...sites.map((site) => siteWords[site]),
  ];
  const said = [
    where.length === 0 ? '' : `pain, ${where.join(', ')}`,
    since === null ? '' : `since ${dayWords(since)}`,
    onset === null ? '' : onsetWords[onset],
  ].filter((part) => part !== '');
  const parts = [
    ...(said.length === 0 ? [] : [`${said.join(', ')}.`]),
    ...(goals === '' ? [] : [`Goals: ${quoted(goals)}`]),
    ...(surgery === null
      ? []
      : [`Surgery: ${quoted(surgery.what)} ${capitalised(surgery.side)} knee, ${dateInWords(surgery.on)}.`]),
    ...prescribed.map(
      (one) => `${capitalised(one.setBy)}: ${restrictionWords(one)}, ${untilWords(one.until)}.`,
    ),
    ...(restrictions === '' ? [] : [`Restrictions: ${quoted(restrictions)}`]),
  ];
  return parts.length === 0 ? null : { head: 'Reason', text: parts.join(' ') };
}

function signsLine({ asked, open, visit }: ReportFacts): ReportLine | null {
  const { sessions, lastMs, signs } = asked;
  const atVisit = visit === null ? '' : redFlagsSentences(visit).join(' ');
  if (sessions === 0 || lastMs === null)
    return atVisit === '' ? null : { head: 'Red flags', text: `At the visit: ${atVisit}` };
  const said = signs.length === 0 ? 'none was said to apply' : `said: ${signs.map(signWords).join('; ')}`;
  const still = open === 0 ? '' : ` Not settled yet: what was said in ${sessionsWords(open)}.`;
  return {
    head: 'Red flags',
    text:
      (atVisit === '' ? '' : `At the visit: ${atVisit} At home: `) +
      `asked before ${sessionsWords(sessions)}, last on ${dayOf(lastMs)}; ${said}.${still}`,
  };
}

function programmeLine({ inForce, patient }: ReportFacts): ReportLine | null {
  if (inForce === null) return null;
  const items = inForce.items.map((item) => {
    const seat =
      item.kind === 'repetitions' && item.seatHeightCm !== null ? `, seat ${item.seatHeightCm} cm` : '';
    return `${itemName(item)}, ${doseWords(item)}${seat}`;
  });
  const limit = patient.painRule?.limit ?? inForce.painLimit;
  const parts = [`${items.join('; ')}.`, perWeekSentence(inForce), `Pain agreed up to ${limit} of 10.`];
  const said = parts.filter((part) => part !== null).join(' ');
  return { head: 'Programme', text: `given on ${dayWords(inForce.createdAt)}: ${said}` };
}

function doneLine({ done, sessions, stopped, abovePainLimit }: ReportFacts): ReportLine | null {
  if (sessions === 0 && done === null) return null;
  const count = done === null ? `${sessionsWords(sessions)} done` : dueWords(done);
  const ended = stopped === 0 ? 'none' : String(stopped);
  const above = abovePainLimit === 0 ? 'none' : String(abovePainLimit);
  return {
    head: 'Done',
    text: `${count}. Stopped or not begun because of the body: ${ended}. With pain above what was agreed: ${above}.`,
  };
}

function painLine({ pain, nextDay }: ReportFacts): ReportLine | null {
  const parts = [
    ...(pain === null
      ? []
      : [
          painSentence('worst of each session, first week and last week', pain.change),
          `The most was ${pain.worst.score}, on ${dayOf(pain.worst.atMs)}.`,
        ]),
    ...(nextDay === null ? [] : [painSentence('The day after', nextDay.change)]),
  ];
  if (parts.length === 0) return null;
  return { head: 'Pain, 0 to 10', text: `${parts.join(' ')} A change is beyond error from 3 points on.` };
}

function controlLine(
  { task, side, earlier, later, change, inLine, unlikeFirst }: ControlFacts,
  others: ReportFacts['notReported'],
): ReportLine {
  const newest = later.at(-1)!;
  const { peak } = newest;
  const found =
    change === null
      ? [`mean inward knee angle ${oneDecimal(peak!.meanDeg)}°, give or take ${oneDecimal(errorOf(newest))}.`]
      : changeSentences(change).filter((sentence) => sentence !== noImportantChange);
  const days = change === null ? '' : ` Then: ${daysWords(earlier)}; now: ${daysWords(later)}.`;
  const unlike =
    unlikeFirst === null
      ? []
      : conditionSentences({ ...unlikeFirst.comparison, notNoted: [] }, ` with ${dayOf(unlikeFirst.atMs)}`);
  const parts = [
    ...found,
    ...unlike,
    ...countSentences(inLine, newest.limits),
    `Under: ${conditionsWords(newest.conditions)}.`,
  ];
  return {
    head: `Control, ${exerciseName(task).toLowerCase()}, ${side}`,
    text: `${parts.join(' ')}${days}${notReportedWords(others)}`,
  };
}

/** 95 % of one set, with what differs between days. */
function errorOf({ peak }: ControlFacts['later'][number]): number {
  return 1.96 * peak!.semDeg;
}

function daysWords(sets: readonly { atMs: number }[]): string {
  const [first, last] = [dayOf(sets[0]!.atMs), dayOf(sets.at(-1)!.atMs)];
  return first === last ? first : `${first} to ${last}`;
}

/** How many were in line, each with its range. */
function countSentences(
  { earlier, later }: ControlFacts['inLine'],
  limits: Parameters<typeof limitsWords>[0],
): string[] {
  if (later === null) return [];
  const then = earlier === null ? '' : `${countRange(earlier)} in the first set, `;
  return [
    `In line (up to ${limitsWords(limits)}; nine times in ten): ${then}${countRange(later)} in the last one.`,
  ];
}

/** What a report leaves to the patient's page. */
function notReportedWords(others: ReportFacts['notReported']): string {
  if (others.length === 0) return '';
  const names = others.map(({ task, side }) => `${exerciseName(task).toLowerCase()}, ${side}`);
  return ` Measured too, and not in this report: ${names.join('; ')}.`;
}

function sidesLine({ sides }: ReportFacts): ReportLine | null {
  if (sides === null) return null;
  const { days } = sides.difference;
  return {
    head: `Sides, ${exerciseName(sides.task).toLowerCase()}`,
    text: `${sideSentence(sides.difference)} Of ${days} ${days === 1 ? 'day' : 'days'}, last on ${dayOf(sides.atMs)}.`,
  };
}

function nextLine({ plans: [inForce], sessions, patient, stages }: ReportCase): ReportLine | null {
  const review = inForce?.reviewDate ?? null;
  const proposed = inForce === undefined ? [] : proposedLines(inForce, sessions, patient, stages);
  const parts = [
    ...(proposed.length === 0 ? [] : ['Proposed by rule, for the therapist to decide.']),
    ...proposed,
    ...(review === null ? [] : [`Looked at again on ${dayWords(review)}.`]),
  ];
  return parts.length === 0 ? null : { head: 'Next', text: parts.join(' ') };
}

function methodLine({ band, measuringVersions }: ReportFacts): ReportLine | null {
  if (band === null) return null;
  const version = measuringVersions.join(' and ');
  return {
    head: 'How measured',
    text:
      'one camera; angle between thigh and shank seen square from the front, inward above 0, less own quiet standing. ' +
      `Error of one repetition ±${oneDecimal(band.deg)}° (median half-width of the 90 % band, ${band.repetitions} ` +
      'repetitions); between days 3° (one standard error, Munro 2012). Not knee abduction in three dimensions. ' +
      `${noImportantChange} Overfoot, measuring version ${version}.`,
  };
}

function sessionsWords(count: number): string {
  return count === 1 ? '1 session' : `${count} sessions`;
}
