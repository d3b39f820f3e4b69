import type { Side } from '#core/protocol/side';
import type { Restriction } from '#documents/patient/caseEntries';
import { planRanges } from '#documents/plan/planRanges';

/** What can be restricted, as it is chosen. */
export const restrictionKinds = [
  { kind: 'bend', words: 'how far the knee bends' },
  { kind: 'no-weight', words: 'no weight on the leg' },
  { kind: 'part-weight', words: 'part of the weight on the leg' },
  { kind: 'open-chain', words: 'no straightening against a load, foot free' },
  { kind: 'load', words: 'no band or weight' },
] as const;

export interface RestrictionDraft {
  kind: (typeof restrictionKinds)[number]['kind'];
  side: Side;
  /** As typed; only for a bend. */
  mostDeg: string;
  setBy: string;
  /** ISO 8601, without a time; empty: until further notice. */
  until: string;
}

type Unsigned<Kind> = Kind extends unknown ? Omit<Kind, 'id' | 'at' | 'by' | 'withdrawn'> : never;

/** The restriction that a form comes to, or a sentence that says what is missing. */
export function restrictionOf(draft: RestrictionDraft): Unsigned<Restriction> | string {
  const { kind, side } = draft;
  const setBy = draft.setBy.trim();
  const until = draft.until === '' ? null : draft.until;
  if (setBy === '') return 'Say who set it, such as the surgeon.';
  const common = { side, setBy, until };
  if (kind === 'no-weight') return { ...common, kind: 'weight-bearing', bearing: 'none' };
  if (kind === 'part-weight') return { ...common, kind: 'weight-bearing', bearing: 'partial' };
  if (kind !== 'bend') return { ...common, kind };
  const mostDeg = Number(draft.mostDeg.replace(',', '.'));
  const { max } = planRanges.bendDeg;
  if (draft.mostDeg.trim() === '' || !(mostDeg >= 0 && mostDeg <= max))
    return `Write how far the knee may bend: degrees from straight, 0 to ${max}.`;
  return { ...common, kind, mostDeg };
}
