import { mean } from 'd3-array';

/** No repetition of a good run is less likely than this to have been in line. */
const leastChance = 0.2;
/** The expected share in line of a good run. */
const leastShare = 0.8;

/**
 * The longest run of repetitions, one after the other, that was in line as far as can be told: none of them was
 * probably beyond a limit, and at least 80 % of the run are expected to have been in line.
 *
 * @param chancesInLine  0 to 1, in the order of the repetitions
 * @returns  repetitions in the run, 0 or more
 * Missing: a repetition that was not measured is null and ends a run
 * Source:  common practice, no source
 */
export function longestGoodRun(chancesInLine: readonly (number | null)[]): number {
  let longest = 0;
  for (let from = 0; from < chancesInLine.length; from++) {
    const run: number[] = [];
    for (const chance of chancesInLine.slice(from)) {
      if (chance === null || chance < leastChance) break;
      run.push(chance);
      if (mean(run)! >= leastShare) longest = Math.max(longest, run.length);
    }
  }
  return longest;
}
