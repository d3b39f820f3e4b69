import formats from 'ajv-formats';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { mutatedText } from './mutateJson';

/** A parser with what it must accept and may throw. */
export interface FuzzedParser {
  name: string;
  /** Name of its file of kept documents. */
  file: string;
  /** A valid document to start from. */
  document: unknown;
  parse: (text: string) => unknown;
  /** Whether what it threw is one of its own refusals. */
  isRefusal: (error: unknown) => boolean;
  /** JSON Schema of its result, as text: checked by another library. */
  jsonSchema: string;
}

export interface FuzzOutcome {
  name: string;
  seed: number;
  tried: number;
  accepted: number;
  refused: number;
  /** The shortest document for each way of being refused or accepted. */
  kinds: ReadonlyMap<string, string>;
}

/**
 * Throws mutated documents at a parser.
 *
 * @throws FuzzFailure  at the first one that crashes it, that it refuses without a sentence, or that it accepts although
 *   an independent JSON Schema library does not
 */
export async function fuzzParser(parser: FuzzedParser, runs: number, seed: number): Promise<FuzzOutcome> {
  const judge = judgeOf(parser);
  const kinds = new Map<string, string>();
  const outcome = { name: parser.name, seed, tried: 0, accepted: 0, refused: 0, kinds };
  const run = await fc.check(
    fc.asyncProperty(mutatedText(parser.document), async (text) => {
      outcome.tried++;
      const refusal = await judge(text);
      if (refusal === null) outcome.accepted++;
      else outcome.refused++;
      const kind = kindOf(refusal);
      if (text.length < (kinds.get(kind)?.length ?? Infinity)) kinds.set(kind, text);
    }),
    { numRuns: runs, seed },
  );
  if (run.failed) throw new FuzzFailure(parser, run.counterexample?.[0] ?? '', seed, run.errorInstance);
  return outcome;
}

/** A document that a parser does not stand, in its shortest form. */
export class FuzzFailure extends Error {
  constructor(
    readonly parser: FuzzedParser,
    readonly text: string,
    seed: number,
    cause: unknown,
  ) {
    super(`${parser.name}, seed ${seed}: ${String(cause)}\n${text}`, { cause });
  }
}

/**
 * Holds a parser to what is asked of it: a refusal is one of its own and says why in a sentence, and what it accepts is
 * valid for an independent JSON Schema library.
 *
 * @returns  a function that gives the refusal's sentence, or null where the document is accepted; throws for anything else
 */
function judgeOf({ parse, isRefusal, jsonSchema }: FuzzedParser): (text: string) => Promise<string | null> {
  const isValid = validator(jsonSchema);
  return async (text) => {
    let read: unknown;
    try {
      read = await parse(text);
    } catch (error) {
      if (!isRefusal(error) || !/\S.*\.$/s.test((error as Error).message)) throw error;
      return (error as Error).message;
    }
    if (!isValid(JSON.parse(JSON.stringify(read))))
      throw new Error(`accepted, but ${JSON.stringify(isValid.errors?.[0])}`);
    return null;
  };
}

/** The ways in which documents are refused or accepted; what breaks the parser is thrown. */
export async function kindsOf(texts: readonly string[], parser: FuzzedParser): Promise<Set<string>> {
  const judge = judgeOf(parser);
  const kinds = new Set<string>();
  for (const text of texts) kinds.add(kindOf(await judge(text)));
  return kinds;
}

/** A refusal without what differs from one document to the next. */
function kindOf(refusal: string | null): string {
  return refusal === null ? 'accepted' : refusal.replace(/"[^"]*"|“[^”]*”|[\d.,-]*\d/g, '…');
}

function validator(jsonSchema: string): ValidateFunction {
  const ajv = new Ajv2020({ strict: false });
  formats.default(ajv);
  return ajv.compile(JSON.parse(jsonSchema) as object);
}
