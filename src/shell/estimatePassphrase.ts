import { ZxcvbnFactory } from '@zxcvbn-ts/core';
import { adjacencyGraphs, dictionary } from '@zxcvbn-ts/language-common';

const estimator = new ZxcvbnFactory({ dictionary, graphs: adjacencyGraphs });

/** How many guesses a passphrase withstands, and the patterns that make it up. */
export function estimate(passphrase: string): { guessesLog10: number; patterns: string[] } {
  const { guessesLog10, sequence } = estimator.check(passphrase, ['overfoot']);
  return { guessesLog10, patterns: sequence.map(({ pattern }) => pattern) };
}
