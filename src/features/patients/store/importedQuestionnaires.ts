import { Problem } from '#core/problem';
import type { Repository } from '#device/storage/repository';
import { parseQuestionnaire } from '#documents/questionnaire/parseQuestionnaire';
import {
  largestQuestionnaireBytes,
  questionnaireDefinitionSchema,
  type QuestionnaireDefinition,
} from '#documents/questionnaire/questionnaire';

const noteName = 'questionnaires';
const most = 20;

/**
 * Those that the practice imported on this device, by title; what can't be read is left out.
 *
 * @param notes  all of this device, as they were read
 */
export function readImported(notes: ReadonlyMap<string, string>): QuestionnaireDefinition[] {
  const text = notes.get(noteName) ?? '[]';
  try {
    const data: unknown = JSON.parse(text);
    return (Array.isArray(data) ? data : []).flatMap((one) => {
      const read = questionnaireDefinitionSchema.safeParse(one);
      return read.success ? [read.data] : [];
    });
  } catch {
    return [];
  }
}

/**
 * Keeps a questionnaire on this device, in place of one with the same url.
 *
 * @throws Problem  where it can't be used, or there are too many
 */
export async function importQuestionnaire(
  notes: Repository['notes'],
  file: Pick<File, 'size' | 'text'>,
): Promise<QuestionnaireDefinition[]> {
  // Nothing of a file that is too large is read.
  const text =
    file.size > largestQuestionnaireBytes ? ' '.repeat(largestQuestionnaireBytes + 1) : await file.text();
  const definition = parseQuestionnaire(text);
  const others = readImported(await notes.read()).filter(({ url }) => url !== definition.url);
  if (others.length >= most)
    throw new Problem('file', `${most} questionnaires are kept on this device. Remove one first.`);
  return write(notes, [...others, definition]);
}

/** Removes a questionnaire; answers that were given to it stay in the records. */
export async function removeImported(
  notes: Repository['notes'],
  url: string,
): Promise<QuestionnaireDefinition[]> {
  return write(
    notes,
    readImported(await notes.read()).filter((one) => one.url !== url),
  );
}

async function write(
  notes: Repository['notes'],
  definitions: QuestionnaireDefinition[],
): Promise<QuestionnaireDefinition[]> {
  const sorted = [...definitions].sort((a, b) => a.title.localeCompare(b.title));
  await notes.write(noteName, JSON.stringify(sorted));
  return sorted;
}
