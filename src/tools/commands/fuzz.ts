import { fuzzedParsers } from './tools/fuzzedParsers';
import { fuzzParser } from './tools/fuzzParser';
import { readArguments } from './tools/readArguments';
import { runCommand } from './tools/runCommand';

const usage = 'Usage: npm run -s fuzz [-- --runs N] [--seed N]';

/** Throws mutated documents at everything that reads one. */
await runCommand(async () => {
  const { values } = readArguments({ runs: { type: 'string' }, seed: { type: 'string' } }, usage);
  const runs = Number(values.runs ?? 10_000);
  const seed = Number(values.seed ?? Date.now() % 2 ** 31);
  for (const parser of fuzzedParsers()) {
    const { name, tried, accepted, refused } = fuzzParser(parser, runs, seed);
    console.log(
      `${name}: ${tried} documents (seed ${seed}), ${refused} refused with a sentence, ${accepted} accepted and valid.`,
    );
  }
});
