/** Why there is no number; 'none' means that there is one, and has code 0. */
export const missingReasons = [
  'none',
  'no-person',
  'joint-unseen',
  'out-of-picture',
  'tracking-jumped',
  'frames-missing',
  'thigh-foreshortened',
  'view-turned',
  'band-too-wide',
  'no-stance',
] as const;
export type MissingReason = Exclude<(typeof missingReasons)[number], 'none'>;

/** One measure over time, on the measurement's uniform time base. */
export interface Curve {
  /** 0 where missing. */
  readonly values: Float64Array;
  /** Index into missingReasons; 0 where the value counts. */
  readonly missing: Uint8Array;
}

/** An empty curve to fill in: 0 everywhere, nothing missing. */
export function blankCurve(samples: number): Curve {
  return { values: new Float64Array(samples), missing: new Uint8Array(samples) };
}

/** The value at a sample, or null where it is missing. */
export function curveValue(curve: Curve, sample: number): number | null {
  return curve.missing[sample] === 0 ? curve.values[sample]! : null;
}

/** Why a sample has no value, or null where it has one. */
export function curveReason(curve: Curve, sample: number): MissingReason | null {
  const code = curve.missing[sample];
  const reason = code === undefined ? 'none' : missingReasons[code]!;
  return reason === 'none' ? null : reason;
}

export function reasonCode(reason: MissingReason | 'none'): number {
  return missingReasons.indexOf(reason);
}
