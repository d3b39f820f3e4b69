import type { Verdict } from '#core/scoring/verdict';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { JudgedRepetition } from './buildSetReport';

/** The largest inward knee angle of one repetition. */
export interface PeakPoint {
  /** Of the repetition, from 1. */
  number: number;
  /** Degrees, inward positive; null where it was not measured. */
  valueDeg: number | null;
  /** Half-width of the error band, degrees; 0 where there is no value. */
  bandDeg: number;
  /** Whether the true peak may lie beyond, at the edge of what was seen. */
  isAtEdge: boolean;
  verdict: Verdict;
}

/** One for each complete repetition that counts, in order of time. */
export function peakPoints(repetitions: readonly JudgedRepetition[]): PeakPoint[] {
  return completeRepetitions(repetitions).map(({ number, ranges, judgement }) => {
    const max = ranges['knee-angle'].max ?? null;
    return {
      number,
      valueDeg: max?.value ?? null,
      bandDeg: max?.band ?? 0,
      isAtEdge: max?.isAtEdge ?? false,
      verdict: judgement.verdict,
    };
  });
}
