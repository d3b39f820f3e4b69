import { formatValue } from '#words/formatMeasure';
import type { PeakChange } from './peakChange';

/**
 * A change as a sentence: what it was, what it is, and whether that is more than error.
 *
 * @param earlierDay  when the earlier set was done, as screens show it
 */
export function changeSentence(change: PeakChange, earlierDay: string): string {
  const { earlierDeg, laterDeg, detectableDeg, verdict } = change;
  const fact = `Mean peak ${formatValue('knee-angle', laterDeg)}, ${formatValue('knee-angle', earlierDeg)} on ${earlierDay}`;
  // Rounded up: a change shown as large as the smallest detectable one must not be within error.
  const least = `${(Math.ceil(10 * detectableDeg) / 10).toFixed(1)}°`;
  switch (verdict) {
    case 'within-error':
      return `${fact}: no change beyond measurement error (${least}).`;
    case 'lower':
      return `${fact}: less inward by more than measurement error (${least}).`;
    case 'higher':
      return `${fact}: more inward by more than measurement error (${least}).`;
  }
}
