import type { z } from 'zod';
import { RecordingFileProblem } from './recordingFileProblem';

/** What tells one kind of document from the others. */
export interface DocumentKind<Value> {
  /** As it follows 'this is not a': 'session document'. */
  name: string;
  format: string;
  version: number;
  schema: z.ZodType<Value>;
  /** Makes a document of this version of one of an older version; left out where there is none. */
  bringUp?(older: object, version: number): object;
}

/**
 * Reads text that may be anything as JSON.
 *
 * @param name  what it ought to be, as it follows 'this is not a'
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function readJson(text: string, name: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new RecordingFileProblem(
      `This is not a ${name}: it is not JSON. Choose a file that was saved here.`,
    );
  }
}

/**
 * Reads data that may be anything as a document of one kind: its format, its version, its schema.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function readDocument<Value>(data: unknown, kind: DocumentKind<Value>): Value {
  const version = checkVersion(data, kind);
  const isOlder = version !== null && version < kind.version;
  const current = isOlder ? (kind.bringUp?.(data as object, version) ?? data) : data;
  const result = kind.schema.safeParse(current);
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  const where = issue === undefined || issue.path.length === 0 ? 'the document' : `"${issue.path.join('.')}"`;
  throw new RecordingFileProblem(
    `This ${kind.name} is damaged at ${where} (${issue?.message ?? 'unknown'}). Save it again where it came from.`,
  );
}

/** @returns  the document's version; null where it gives none that is a number */
function checkVersion(data: unknown, kind: Omit<DocumentKind<unknown>, 'schema'>): number | null {
  const { format, version } = (typeof data === 'object' && data !== null ? data : {}) as Record<
    string,
    unknown
  >;
  if (format !== kind.format) {
    throw new RecordingFileProblem(`This is not a ${kind.name}. Choose a file that was saved here.`);
  }
  if (typeof version === 'number' && version > kind.version) {
    throw new RecordingFileProblem(
      `This ${kind.name} is of version ${version}; this program reads up to ${kind.version}. Update the program.`,
    );
  }
  return typeof version === 'number' ? version : null;
}
