import { Problem } from '#core/problem';
import type { DocumentKind } from './documentKind';
import { parseJson, TooMuchJson } from './parseJson';

/**
 * Reads a document from untrusted text.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parseDocument<Value>(text: string, kind: DocumentKind<Value>): Value {
  let data: unknown;
  try {
    data = parseJson(text);
  } catch (error) {
    const { notJson, tooMuch } = kind.words;
    throw new Problem(kind.problem, error instanceof TooMuchJson ? tooMuch : notJson);
  }
  return readDocument(data, kind);
}

/**
 * Reads a document from untrusted data: its format, its version, its content. An older version is migrated
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
    throw fail(words.newer(version, kind.version));
  }
  const isOlder = typeof version === 'number' && version < kind.version;
  const content = kind.read(isOlder ? (kind.bringUp?.(data as object, version) ?? data) : data);
  if ('value' in content) return content.value;
  throw fail(words.faulty(content.fault, content.whatNext));
}

function fieldsOf(data: unknown): Record<string, unknown> {
  return (typeof data === 'object' && data !== null ? data : {}) as Record<string, unknown>;
}
