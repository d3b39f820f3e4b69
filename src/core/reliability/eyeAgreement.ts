import { verdictSide, type Verdict } from '../scoring/verdict';
import { kappa, type Kappa } from '../statistics/kappa';

/** A repetition as somebody judged it by eye, and as it was measured. */
export interface JudgedByEye {
  eye: 'in' | 'out';
  measured: Verdict;
}

/** With fewer repetitions no kappa is given: its interval would be a guess. Our choice, no source. */
export const leastJudged = 10;

export interface EyeAgreement {
  /** Repetitions of which a side is named both ways. */
  counts: { bothIn: number; bothOut: number; outByEye: number; outByMeasuring: number };
  /** Those that were judged by eye where measuring names no side; they are in no count. */
  untold: number;
  /** Agreement beyond chance; 'too-few' below `leastJudged`, null where one class was used throughout. */
  kappa: Kappa | 'too-few' | null;
}

/** A repetition as the same person judged it by eye at two times. */
export interface JudgedTwice {
  first: 'in' | 'out';
  second: 'in' | 'out';
}

export interface EyeRepeat {
  counts: { alikeIn: number; alikeOut: number; thenOut: number; nowOut: number };
  /** As in `EyeAgreement`. */
  kappa: EyeAgreement['kappa'];
}

/**
 * How far one eye agrees with itself.
 *
 * @param judged  each repetition once: kappa counts repetitions as independent
 * Source:  `kappa`
 */
export function eyeRepeat(judged: readonly JudgedTwice[]): EyeRepeat {
  const count = (first: 'in' | 'out', second: 'in' | 'out') =>
    judged.filter((one) => one.first === first && one.second === second).length;
  const counts = {
    alikeIn: count('in', 'in'),
    alikeOut: count('out', 'out'),
    thenOut: count('out', 'in'),
    nowOut: count('in', 'out'),
  };
  const { alikeIn, alikeOut, thenOut, nowOut } = counts;
  return {
    counts,
    kappa:
      judged.length < leastJudged
        ? 'too-few'
        : kappa([
            [alikeIn, nowOut],
            [thenOut, alikeOut],
          ]),
  };
}

/**
 * How far an eye and the measuring agree on what was in line and what was out of it.
 *
 * @param judged  each repetition once: kappa counts repetitions as independent
 * Source:  `kappa`
 */
export function eyeAgreement(judged: readonly JudgedByEye[]): EyeAgreement {
  const sides = judged.map(({ eye, measured }) => ({ eye, tool: verdictSide(measured) }));
  const count = (eye: 'in' | 'out', tool: 'in' | 'out') =>
    sides.filter((one) => one.eye === eye && one.tool === tool).length;
  const counts = {
    bothIn: count('in', 'in'),
    bothOut: count('out', 'out'),
    outByEye: count('out', 'in'),
    outByMeasuring: count('in', 'out'),
  };
  const { bothIn, bothOut, outByEye, outByMeasuring } = counts;
  const told = bothIn + bothOut + outByEye + outByMeasuring;
  return {
    counts,
    untold: judged.length - told,
    kappa:
      told < leastJudged
        ? 'too-few'
        : kappa([
            [bothIn, outByMeasuring],
            [outByEye, bothOut],
          ]),
  };
}
