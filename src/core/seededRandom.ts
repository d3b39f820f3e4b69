export interface SeededRandom {
  /** Evenly spread from 0 to below 1. */
  uniform(): number;
  /** Normal distribution, mean 0, standard deviation 1 (Box & Muller 1958). */
  gaussian(): number;
}

/** The same numbers for the same seed on every machine: a 32-bit multiplicative generator ('mulberry32'). */
export function seededRandom(seed: number): SeededRandom {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const gaussian = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, gaussian };
}
