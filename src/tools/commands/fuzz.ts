import { keepFailure, keepKinds, keptDocuments } from './tools/fuzzCorpus';
import { fuzzedParsers } from './tools/fuzzedParsers';
import { FuzzFailure, fuzzParser, kindsOf } from './tools/fuzzParser';
import { readArguments } from './tools/readArguments';
import { runCommand } from './tools/runCommand';

const usage = 'Usage: npm run -s fuzz [-- --runs N] [--seed N] [--keep]';

/**
 * Throws mutated documents at everything that reads one. Whatever breaks a reader is kept in fixtures/fuzz, which the unit
 * tests read; with --keep, so is one document for each way in which a reader answers that is not kept yet.
 */
await runCommand(async () => {
  const { values } = readArguments(
    { runs: { type: 'string' }, seed: { type: 'string' }, keep: { type: 'boolean' } },
    usage,
  );
  const runs = Number(values.runs ?? 10_000);
  const seed = Number(values.seed ?? Date.now() % 2 ** 31);
  for (const parser of fuzzedParsers()) {
    const known = await kindsOf(keptDocuments(parser), parser);
    const { name, tried, accepted, refused, kinds } = await fuzzParser(parser, runs, seed).catch(
      (error: unknown) => {
        if (error instanceof FuzzFailure) keepFailure(parser, error.text);
        throw error;
      },
    );
    console.log(
      `${name}: ${tried} documents (seed ${seed}), ${refused} refused with a sentence, ${accepted} accepted and valid; answers of ${kinds.size} kinds.`,
    );
    if (values.keep !== true) continue;
    const fresh = [...kinds].filter(([kind]) => !known.has(kind)).map(([, text]) => text);
    console.log(`  ${keepKinds(parser, fresh)} documents are kept.`);
  }
});
