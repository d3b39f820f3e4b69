import { builtInQuestionnaires, findBuiltIn } from '#core/questionnaires/builtIn';
import { findScoreRule, scoreByRule } from '#core/questionnaires/scoreRules';
import {
  longestCaseText,
  type QuestionnaireAnswer,
  type QuestionnaireRecord,
} from '#documents/patient/caseEntries';
import type { Question, QuestionnaireDefinition } from '#documents/questionnaire/questionnaire';

/** A question as a form shows it. */
export interface FormQuestion extends Question {
  /** Of a number; null where there is no bound. */
  range: { min: number; max: number; low: string; high: string } | null;
  /** Whether what it asks about is in the patient's own words, written down with the answer. */
  isNamed: boolean;
}

/** A questionnaire as a form shows it. */
export interface QuestionnaireForm extends Pick<
  QuestionnaireDefinition,
  'url' | 'version' | 'title' | 'copyright'
> {
  /** How it is asked; empty where nothing is said. */
  how: string;
  questions: FormQuestion[];
}

/** Those that are built in, then those that the practice imported. */
export function questionnaireForms(imported: readonly QuestionnaireDefinition[]): QuestionnaireForm[] {
  const builtIn = builtInQuestionnaires.map(({ id, title, how, questions }): QuestionnaireForm => ({
    url: id,
    version: null,
    title,
    copyright: '',
    how,
    questions: questions.map(({ linkId, asks, min, max, low, high }) => ({
      ...{ linkId, heading: '', asks, kind: 'whole', options: [] },
      range: { min, max, low, high },
      isNamed: id === 'own-activities',
    })),
  }));
  const theirs = imported.map((definition): QuestionnaireForm => ({
    ...definition,
    how: '',
    questions: definition.questions.map((question) => ({ ...question, range: null, isNamed: false })),
  }));
  return [...builtIn, ...theirs];
}

/** What was typed or chosen, and what a question is about in the patient's own words, by linkId. */
export interface Typed {
  answers: Readonly<Record<string, string>>;
  names: Readonly<Record<string, string>>;
}

/** The answers of a form, each checked; a sentence where one is wrong, or all are missing. */
export function answersOf(
  { questions }: QuestionnaireForm,
  { answers, names }: Typed,
): QuestionnaireRecord['answers'] | string {
  const made: QuestionnaireRecord['answers'] = [];
  for (const question of questions) {
    const typed = (answers[question.linkId] ?? '').trim();
    const name = (names[question.linkId] ?? '').trim();
    if (question.isNamed && typed !== '' && name === '') return `Write down what ${question.asks} is.`;
    const answer = typed === '' ? null : answerOf(question, typed);
    if (typeof answer === 'string') return answer;
    if (question.isNamed && name === '') continue;
    made.push({
      linkId: question.linkId,
      question: (question.isNamed ? name : question.asks).slice(0, longestCaseText.question),
      answers: answer === null ? [] : [answer],
    });
  }
  return made.every((one) => one.answers.length === 0) ? 'Answer one question at least.' : made;
}

function answerOf(question: FormQuestion, typed: string): QuestionnaireAnswer | string {
  const { kind, asks, range } = question;
  const value = Number(typed.replace(',', '.'));
  switch (kind) {
    case 'choice': {
      const option = question.options[Number(typed)];
      return option === undefined ? `Choose one of the answers: ${asks}` : { kind, ...option };
    }
    case 'yes-no':
      return { kind, value: typed === 'yes' };
    case 'whole':
      if (!Number.isSafeInteger(value) || (range !== null && (value < range.min || value > range.max)))
        return `Write a whole number${range === null ? '' : ` from ${range.min} to ${range.max}`}: ${asks}`;
      return { kind, value };
    case 'number':
      return Number.isFinite(value) ? { kind, value } : `Write a number: ${asks}`;
    case 'text':
      return { kind, value: typed.slice(0, longestCaseText.answer) };
    case 'date':
      return { kind, value: typed };
  }
}

/** The score of answers, and why there is none where a rule can't give one. */
export function scoreOf(
  url: string,
  answers: QuestionnaireRecord['answers'],
): { score: number | null; why: string | null } {
  const builtIn = findBuiltIn(url);
  const numbers = answers.flatMap(({ answers: [answer] }) =>
    answer?.kind === 'whole' ? [answer.value] : [],
  );
  if (builtIn !== null) {
    const isSingle = builtIn.questions.length === 1;
    if (builtIn.scored === 'each' && !isSingle) return { score: null, why: null };
    const total = numbers.reduce((sum, one) => sum + one, 0);
    return { score: numbers.length === 0 ? null : total / numbers.length, why: null };
  }
  const points = answers.map(({ answers: [answer] }) => {
    if (answer?.kind === 'choice') return answer.points;
    return answer?.kind === 'whole' ? answer.value : null;
  });
  const rule = findScoreRule(url);
  const { score, fault } = scoreByRule(rule, points);
  if (fault === null) return { score, why: null };
  return {
    score,
    why: {
      'no-rule': 'No score is known for this one.',
      'other-questions': `No score: its rule is for ${rule?.questions} questions.`,
      'other-points': `No score: its rule is for answers that count ${rule?.least} to ${rule?.most}.`,
      'too-few': `No score: ${rule?.needed} answers are needed.`,
    }[fault],
  };
}
