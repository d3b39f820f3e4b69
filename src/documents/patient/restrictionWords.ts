import { dateInWords } from '#words/dateWords';
import type { Restriction } from './caseEntries';

/** What a restriction allows, as a phrase. */
export function restrictionWords(restriction: Restriction): string {
  const { side } = restriction;
  switch (restriction.kind) {
    case 'bend':
      return `the ${side} knee bends to ${restriction.mostDeg}° at most`;
    case 'weight-bearing':
      return restriction.bearing === 'none'
        ? `no weight on the ${side} leg`
        : `part of the weight on the ${side} leg`;
    case 'open-chain':
      return `the ${side} knee is not straightened against a load with the foot free`;
    case 'load':
      return `no band or weight on the ${side} leg`;
  }
}

/** 'until Sunday 1 March 2026', 'until further notice'. */
export function untilWords(until: string | null): string {
  return `until ${until === null ? 'further notice' : dateInWords(until)}`;
}
