import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { Problem } from '#core/problem';
import { bySchema } from '#documents/reading/bySchema';
import { fileWords, headWords, type DocumentKind } from '#documents/reading/documentKind';
import { parseDocument, readDocument } from '#documents/reading/readDocument';

const schema = z.strictObject({
  format: z.literal('list'),
  version: z.literal(3),
  names: z.array(z.string()),
});
const kind: DocumentKind<z.infer<typeof schema>> = {
  problem: 'file',
  format: 'list',
  version: 3,
  bringUp: (older, version) => (version === 2 ? { names: [], ...older, version: 3 } : older),
  read: bySchema(schema, ({ names }) =>
    new Set(names).size < names.length ? 'a name is there twice' : null,
  ),
  words: fileWords('list', 'Choose a list.', 'Write it again.'),
};

function problemOf(read: () => unknown): string | null {
  try {
    read();
    return null;
  } catch (error) {
    if (error instanceof Problem && error.kind === 'file') return error.message;
    throw error;
  }
}
const problemWith = (data: unknown) => problemOf(() => readDocument(data, kind));

describe('readDocument(data, kind)', () => {
  it('reads a document of the latest version', () => {
    const list = { format: 'list', version: 3, names: ['a', 'b'] };
    expect(readDocument(list, kind)).toEqual(list);
  });

  it('migrates an older version, and leaves the given document as it is', () => {
    const older = { format: 'list', version: 2 };
    expect(readDocument(older, kind)).toEqual({ format: 'list', version: 3, names: [] });
    expect(older).toEqual({ format: 'list', version: 2 });
    expect(problemWith({ format: 'list', version: 1 })).toMatch(/^This list is damaged at "version"/);
  });

  it.each([null, undefined, 'list', [], {}, { format: 'lists', version: 3 }])(
    'refuses data of another kind: %j',
    (data) => expect(problemWith(data)).toBe('This is not a list. Choose a list.'),
  );

  it('refuses a newer version before it reads the rest', () => {
    expect(problemWith({ format: 'list', version: 4 })).toBe(
      'This list is of version 4; this program reads up to 3. Update the program.',
    );
  });

  it('names the damaged place, and quotes at most 200 characters', () => {
    const damaged = { format: 'list', version: 3, names: ['a', 1] };
    expect(problemWith(damaged)).toMatch(/^This list is damaged at "names\.1" \(.+\)\. Write it again\.$/);
    const long = { format: 'list', version: 3, names: [], ['x'.repeat(500)]: 1 };
    expect(problemWith(long)).toMatch(/^This list is damaged at the document \(.{200}\)\. Write it again\.$/);
  });

  it('says which parts of a valid document do not fit together', () => {
    expect(problemWith({ format: 'list', version: 3, names: ['a', 'a'] })).toBe(
      'This list is damaged: a name is there twice. Write it again.',
    );
  });
});

describe('parseDocument(text, kind)', () => {
  it('refuses text that is not JSON', () => {
    expect(problemOf(() => parseDocument('{', kind))).toBe(
      'This is not a list: it is not JSON. Choose a list.',
    );
  });

  it('calls the first line of another file no such file, JSON or not', () => {
    const head = { ...kind, words: headWords('backup', 'Take another copy.') };
    expect(problemOf(() => parseDocument('{', head))).toBe('It is not a backup from Overfoot.');
    expect(problemOf(() => parseDocument('{}', head))).toBe('It is not a backup from Overfoot.');
  });
});
