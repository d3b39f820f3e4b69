import { Problem } from '#core/problem';
import { longestCaseText, mostInEntry } from '../patient/caseEntries';
import { parseJson } from '../reading/parseJson';
import { z } from '../schema/zod';
import {
  largestQuestionnaireBytes,
  mostOptions,
  questionnaireDefinitionSchema,
  type Question,
  type QuestionnaireDefinition,
} from './questionnaire';

/** Points of an answer in FHIR R4, and as later versions name them. */
const pointUrls = [
  'http://hl7.org/fhir/StructureDefinition/ordinalValue',
  'http://hl7.org/fhir/StructureDefinition/itemWeight',
];
/** Groups within groups. */
const deepest = 6;

const extensions = z
  .array(z.looseObject({ url: z.string(), valueDecimal: z.number().optional() }))
  .optional();
const optionShape = z.looseObject({
  extension: extensions,
  valueCoding: z
    .looseObject({
      extension: extensions,
      system: z.string().optional(),
      code: z.string().optional(),
      display: z.string().optional(),
    })
    .optional(),
  valueInteger: z.int().optional(),
  valueString: z.string().optional(),
});

interface Item {
  linkId: string;
  text?: string | undefined;
  prefix?: string | undefined;
  type: string;
  repeats?: boolean | undefined;
  enableWhen?: unknown[] | undefined;
  answerValueSet?: string | undefined;
  answerOption?: z.infer<typeof optionShape>[] | undefined;
  item?: Item[] | undefined;
}
const itemShape: z.ZodType<Item> = z.lazy(() =>
  z.looseObject({
    linkId: z.string(),
    text: z.string().optional(),
    prefix: z.string().optional(),
    type: z.string(),
    repeats: z.boolean().optional(),
    enableWhen: z.array(z.unknown()).optional(),
    answerValueSet: z.string().optional(),
    answerOption: z.array(optionShape).optional(),
    item: z.array(itemShape).optional(),
  }),
);
const fileShape = z.looseObject({
  resourceType: z.literal('Questionnaire'),
  url: z.string().optional(),
  version: z.string().optional(),
  title: z.string().optional(),
  name: z.string().optional(),
  copyright: z.string().optional(),
  item: z.array(itemShape).optional(),
});

const kinds: Partial<Record<string, Question['kind']>> = {
  boolean: 'yes-no',
  decimal: 'number',
  integer: 'whole',
  string: 'text',
  text: 'text',
  date: 'date',
  choice: 'choice',
};

/**
 * A questionnaire from a FHIR R4 Questionnaire as JSON, of which all can be shown.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parseQuestionnaire(text: string): QuestionnaireDefinition {
  if (text.length > largestQuestionnaireBytes)
    throw refused(`is larger than ${largestQuestionnaireBytes / 1000} kB`);
  const read = fileShape.safeParse(dataOf(text));
  if (!read.success) throw refused('is no Questionnaire of FHIR R4 in JSON, or is damaged');
  const { url, version = null, title, name, copyright = '', item = [] } = read.data;
  if (url === undefined || url === '')
    throw refused('has no url, by which its answers could be told from those of another');
  const questions = questionsOf(item, '', 0);
  if (questions.length === 0) throw refused('asks nothing');
  if (questions.length > mostInEntry.questions)
    throw refused(`asks more than ${mostInEntry.questions} questions`);
  const linkIds = questions.map(({ linkId }) => linkId);
  const twice = linkIds.find((id, index) => linkIds.indexOf(id) < index);
  if (twice !== undefined) throw refused(`has two questions with the linkId ${quoted(twice)}`);
  const checked = questionnaireDefinitionSchema.safeParse({
    url,
    version,
    title: title ?? name ?? url.slice(0, longestCaseText.title),
    copyright,
    questions,
  });
  if (checked.success) return checked.data;
  const path = checked.error.issues[0]?.path.join('.') ?? '';
  throw refused(`has an entry that is empty or too long (${path})`);
}

function dataOf(text: string): unknown {
  try {
    return parseJson(text.replace(/^\uFEFF/, ''));
  } catch {
    return null;
  }
}

/** Groups and lines that are only shown become the heading of the question after them. */
function questionsOf(items: readonly Item[], above: string, depth: number): Question[] {
  if (depth > deepest) throw refused(`has groups within groups, more than ${deepest} deep`);
  const questions: Question[] = [];
  let heading = above;
  for (const item of items) {
    const asks = [item.prefix, item.text].filter((part) => part !== undefined && part !== '').join(' ');
    if ((item.enableWhen ?? []).length > 0)
      throw refused(`asks ${quoted(asks)} only after certain answers, which can't be shown here`);
    if (item.type === 'display') {
      heading = joined(heading, asks);
      continue;
    }
    const within = item.type === 'group' ? joined(heading, asks) : '';
    if (item.type !== 'group') questions.push(questionOf(item, asks, heading));
    questions.push(...questionsOf(item.item ?? [], within, depth + 1));
    heading = '';
  }
  return questions;
}

function questionOf(item: Item, asks: string, heading: string): Question {
  const kind = kinds[item.type];
  if (kind === undefined)
    throw refused(
      `asks ${quoted(asks)} for an answer of the kind ${quoted(item.type)}, which can't be shown here`,
    );
  if (item.repeats === true)
    throw refused(`asks ${quoted(asks)} for several answers, which can't be kept here`);
  const options = kind === 'choice' ? optionsOf(item, asks) : [];
  return { linkId: item.linkId, heading, asks, kind, options };
}

function optionsOf({ answerOption = [], answerValueSet }: Item, asks: string): Question['options'] {
  if (answerOption.length === 0) {
    const why = answerValueSet === undefined ? 'has no answers' : 'has its answers in a list elsewhere';
    throw refused(`${why} for ${quoted(asks)}`);
  }
  if (answerOption.length > mostOptions)
    throw refused(`has more than ${mostOptions} answers for ${quoted(asks)}`);
  return answerOption.map(({ extension, valueCoding, valueInteger, valueString }) => {
    const points = pointsOf(extension) ?? pointsOf(valueCoding?.extension);
    if (valueInteger !== undefined) {
      const code = String(valueInteger);
      return { system: null, code, display: code, points: points ?? valueInteger };
    }
    const { system = null, code = valueString, display = code } = valueCoding ?? {};
    if (code === undefined || display === undefined)
      throw refused(`has an answer without a code for ${quoted(asks)}`);
    return { system, code, display, points };
  });
}

function pointsOf(extension: z.infer<typeof extensions>): number | null {
  return extension?.find(({ url }) => pointUrls.includes(url))?.valueDecimal ?? null;
}

function joined(before: string, after: string): string {
  return [before, after].filter((part) => part !== '').join(' · ');
}

function quoted(words: string): string {
  return `“${words.slice(0, 60)}”`;
}

function refused(why: string): Problem {
  return new Problem(
    'file',
    `This questionnaire can’t be used: it ${why}. Choose another file, or ask whoever made it.`,
  );
}
