import { handMeasures } from '#core/criteria/handMeasures';
import type { HandMeasureId } from '#core/criteria/handRanges';
import type { CriterionRecord } from '#documents/patient/caseEntries';
import { dateInWords } from '#words/dateWords';

const unitWords = { deg: 'degrees', '%': 'percent', weeks: 'weeks', points: 'points' } as const;

/** 'Value, percent, 0 to 300'. */
export function handMeasureLabel(measure: HandMeasureId): string {
  const { unit, min, max } = factsOf(measure);
  return `Value, ${unitWords[unit]}, ${min < 0 ? `−${-min}` : min} to ${max}`;
}

/** What is wrong with a value that somebody enters; null where nothing is. */
export function handValueLack(
  measure: HandMeasureId,
  text: string,
  on: string,
  today: string,
): string | null {
  const { unit, min, max } = factsOf(measure);
  const value = Number(text.replace(',', '.'));
  if (text.trim() === '' || !(value >= min && value <= max))
    return `Write the value in ${unitWords[unit]}, from ${min < 0 ? `−${-min}` : min} to ${max}.`;
  if (on === '') return 'Choose the day on which it was measured.';
  return on > today ? 'The day is in the future. Choose the day on which it was measured.' : null;
}

/** Those that were not taken out, the latest first, in words. */
export function handEntries(criteria: readonly CriterionRecord[]): { id: string; words: string }[] {
  return criteria
    .filter(({ withdrawn }) => withdrawn === null)
    .sort((a, b) => (a.on < b.on ? 1 : -1))
    .map(({ id, measure, value, on, by }) => {
      const { name, unit } = factsOf(measure);
      return { id, words: `${name}: ${value} ${unitWords[unit]}, ${dateInWords(on)}, ${by}.` };
    });
}

function factsOf(measure: HandMeasureId) {
  return handMeasures.find(({ id }) => id === measure)!;
}
