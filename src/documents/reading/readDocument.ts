import { Problem } from '#core/problem';
import type { DocumentKind } from './documentKind';

/**
 * Reads a document from text that may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parseDocument<Value>(text: string, kind: DocumentKind<Value>): Value {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw new Problem(kind.problem, kind.words.notJson);
  }
  return readDocument(data, kind);
}

/**
 * Reads a document from data that may be anything: its format, its version, its content. An older version is migrated
 * first.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readDocument<Value>(data: unknown, kind: DocumentKind<Value>): Value {
  const { words } = kind;
  const fail = (sentence: string) => new Problem(kind.problem, sentence);
  const { format, version } = fieldsOf(data);
  if (format !== kind.format) throw fail(words.notOne);
  if (typeof version === 'number' && version > kind.version) {
    throw fail(
      `${words.subject} is of version ${version}; this program reads up to ${kind.version}. Update the program.`,
    );
  }
  const isOlder = typeof version === 'number' && version < kind.version;
  const content = kind.read(isOlder ? (kind.bringUp?.(data as object, version) ?? data) : data);
  if ('value' in content) return content.value;
  throw fail(`${words.subject} ${content.fault}. ${words.getAgain}`);
}

function fieldsOf(data: unknown): Record<string, unknown> {
  return (typeof data === 'object' && data !== null ? data : {}) as Record<string, unknown>;
}
