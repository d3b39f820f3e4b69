import formats from 'ajv-formats';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { mutatedText } from './mutateJson';

/** A parser with what it must accept and may throw. */
export interface FuzzedParser {
  name: string;
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
}

/**
 * Throws mutated documents at a parser.
 *
 * @throws Error  at the first one that crashes it, that it refuses without a sentence, or that it accepts although an
 *   independent JSON Schema library does not; the message holds seed and document
 */
export function fuzzParser(
  { name, document, parse, isRefusal, jsonSchema }: FuzzedParser,
  runs: number,
  seed: number,
): FuzzOutcome {
  const isValid = validator(jsonSchema);
  const outcome = { name, seed, tried: 0, accepted: 0, refused: 0 };
  fc.assert(
    fc.property(mutatedText(document), (text) => {
      outcome.tried++;
      let read: unknown;
      try {
        read = parse(text);
      } catch (error) {
        if (!isRefusal(error) || !/\S.*\.$/s.test((error as Error).message)) throw error;
        outcome.refused++;
        return;
      }
      outcome.accepted++;
      if (!isValid(JSON.parse(JSON.stringify(read))))
        throw new Error(`accepted, but ${JSON.stringify(isValid.errors?.[0])}`);
    }),
    { numRuns: runs, seed },
  );
  return outcome;
}

function validator(jsonSchema: string): ValidateFunction {
  const ajv = new Ajv2020({ strict: false });
  formats.default(ajv);
  return ajv.compile(JSON.parse(jsonSchema) as object);
}
