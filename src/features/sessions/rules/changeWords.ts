import { formatValue } from '#words/formatMeasure';
import type { PeakChange } from './peakChange';

/**
 * A change as a sentence: what it was, what it is, and whether that is more than error.
 *
 * @param earlierDay  when the earlier set was done, as it stands on screens
 */
export function changeSentence(change: PeakChange, earlierDay: string): string {
  const { earlierDeg, laterDeg, detectableDeg, verdict } = change;
  const fact = `Mean peak ${formatValue('knee-angle', laterDeg)}, ${formatValue('knee-angle', earlierDeg)} on ${earlierDay}`;
  // Rounded up: a change that is shown as large as what can be told must not be within error.
  const least = `${Math.ceil(detectableDeg)}°`;
  switch (verdict) {
    case 'within-error':
      return `${fact}: no change beyond error, which takes more than ${least}.`;
    case 'lower':
      return `${fact}: less inward by more than error (${least}).`;
    case 'higher':
      return `${fact}: more inward by more than error (${least}).`;
  }
}
