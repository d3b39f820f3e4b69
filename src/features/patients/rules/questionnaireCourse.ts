import { ascending } from 'd3-array';
import { findBuiltIn, type ScoreFacts } from '#core/questionnaires/builtIn';
import { scoreChange } from '#core/questionnaires/scoreChange';
import { findScoreRule } from '#core/questionnaires/scoreRules';
import type { QuestionnaireAnswer, QuestionnaireRecord } from '#documents/patient/caseEntries';
import { dateInWords } from '#words/dateWords';
import { oneDecimal } from '#words/oneDecimal';

/** Values of one questionnaire over time, the oldest first. */
export interface ScoreSeries {
  name: string;
  points: { on: string; by: string; value: number }[];
  facts: ScoreFacts;
}

/** One questionnaire with every time it was answered, the oldest first. */
export interface QuestionnaireCourse {
  of: string;
  title: string;
  records: QuestionnaireRecord[];
  series: ScoreSeries[];
  /** Earlier ones that asked about something else, and are not compared. */
  others: number;
  notTold: string | null;
}

/** The questionnaires of a patient, the one answered last first; what was taken out is left out. */
export function questionnaireCourses(all: readonly QuestionnaireRecord[]): QuestionnaireCourse[] {
  const kept = all
    .filter(({ withdrawn }) => withdrawn === null)
    .sort((a, b) => ascending(a.on, b.on) || ascending(a.at, b.at));
  const urls = [...new Set([...kept].reverse().map(({ of }) => of))];
  return urls.map((of) => {
    const records = kept.filter((one) => one.of === of);
    const last = records.at(-1)!;
    const alike = records.filter((one) => asked(one) === asked(last));
    const title = findBuiltIn(of)?.title ?? last.title;
    const notTold = findBuiltIn(of)?.notTold ?? null;
    return {
      of,
      title,
      records,
      series: seriesOf(of, alike),
      others: records.length - alike.length,
      notTold,
    };
  });
}

/** What a series says of the first time and the last. */
export function seriesSentences({ name, points, facts }: ScoreSeries): string[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const when = ({ on, by }: ScoreSeries['points'][number]) => `${dateInWords(on)}, ${by}`;
  if (points.length === 1) return [`${name}: ${oneDecimal(last.value)} (${when(last)}).`];
  const { difference, isBeyondError, isImportant } = scoreChange(first.value, last.value, facts);
  const { detectable, important } = facts;
  const way = difference > 0 ? '+' : '';
  return [
    `${name}: ${oneDecimal(first.value)} (${when(first)}), then ${oneDecimal(last.value)} (${when(last)}): ${way}${oneDecimal(difference)}.`,
    detectable === null
      ? 'No error of it is published that we know of: no source.'
      : `${isBeyondError === true ? 'Beyond error' : 'Within error'}: more than ${detectable.points} (${detectable.source}).`,
    important === null
      ? 'No size of change is published that people call important, as far as we know.'
      : `${isImportant === true ? 'As large as people call important' : 'Smaller than people call important'}: from ${important.points} on (${important.source}).`,
  ];
}

/** 'Compared …: 2; Stairs: 4': each answer in words. */
export function answersWords({ answers }: QuestionnaireRecord): string {
  return answers
    .map(({ question, linkId, answers: given }) => {
      const said = given.length === 0 ? 'not answered' : given.map(answerWords).join(', ');
      return `${question === '' ? linkId : question}: ${said}`;
    })
    .join('; ');
}

function answerWords(answer: QuestionnaireAnswer): string {
  switch (answer.kind) {
    case 'yes-no':
      return answer.value ? 'yes' : 'no';
    case 'choice':
      return answer.display;
    default:
      return String(answer.value);
  }
}

/** What was asked, so that only the same is compared. */
function asked({ answers, version }: QuestionnaireRecord): string {
  return JSON.stringify([version, answers.map(({ linkId, question }) => [linkId, question.toLowerCase()])]);
}

function seriesOf(of: string, records: readonly QuestionnaireRecord[]): ScoreSeries[] {
  const builtIn = findBuiltIn(of);
  const facts: ScoreFacts = builtIn ?? findScoreRule(of) ?? { detectable: null, important: null };
  if (builtIn?.scored === 'each')
    return builtIn.questions.map(({ linkId, asks }) => ({
      name: asks,
      facts,
      points: records.flatMap((record) => {
        const answer = record.answers.find((one) => one.linkId === linkId)?.answers[0];
        return answer?.kind === 'whole' ? [pointOf(record, answer.value)] : [];
      }),
    }));
  const points = records.flatMap((record) => (record.score === null ? [] : [pointOf(record, record.score)]));
  const name = builtIn === null ? `Score, ${findScoreRule(of)?.words ?? ''}` : 'Mean of the activities';
  return points.length === 0 ? [] : [{ name, facts, points }];
}

function pointOf({ on, by }: QuestionnaireRecord, value: number): ScoreSeries['points'][number] {
  return { on, by, value };
}
