import type { SetConditions, WornFootwear } from '#core/conditions/setConditions';
import type { FeedbackMode } from '#core/protocol/feedback';
import { notedWords } from '#words/conditionSentences';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { formatValue } from '#words/formatMeasure';
import { countRange } from '#words/setCountWords';
import type { CourseMark, CourseSet } from './buildCourse';

const feedbackWords: Record<FeedbackMode, string> = {
  'every-repetition': 'told after every repetition',
  'only-outside': 'told only when out of line',
  'after-the-set': 'told after the set',
  none: 'told nothing',
};

const footwearWords: Record<WornFootwear, string> = { shoes: 'shoes', 'bare-feet': 'bare feet' };

/** A set as it is read out, and as its button says: 'Split-stance sit-to-stand, left, set 1, Mon 2 Mar 2026: ...'. */
export function setSentence(set: CourseSet): string {
  const { task, side, number, atMs } = set;
  const name = `${exerciseName(task)}, ${side}, set ${number}`;
  return `${name}, ${dayWords(new Date(atMs).toISOString())}: ${meanWords(set)}, in line ${inLineWords(set)}`;
}

/** 'mean peak 12° inward ±2', which is a 95 % interval of the set's mean; or that there are too few. */
export function meanWords({ peak, points }: CourseSet): string {
  const measured = points.filter(({ valueDeg }) => valueDeg !== null).length;
  if (peak === null) return `no mean: ${measured === 0 ? 'nothing' : `only ${measured}`} measured`;
  return `mean peak ${formatValue('knee-angle', peak.meanDeg)} ±${Math.max(1, Math.round(ninetyFive * peak.semDeg))}`;
}

/** Half-width of a 95 % interval in standard errors (normal distribution). */
const ninetyFive = 1.96;

/** '2 to 5 of 6', or 'not measured'. */
export function inLineWords({ inLine }: CourseSet): string {
  return inLine === null ? 'not measured' : countRange(inLine);
}

/** The peaks of a set with their bands: '12° ±4, 9° ±3'. */
export function peaksWords({ points }: CourseSet): string {
  return points
    .map(({ valueDeg, bandDeg }) =>
      valueDeg === null ? '–' : `${formatValue('knee-angle', valueDeg)} ±${Math.max(1, Math.round(bandDeg))}`,
    )
    .join(', ');
}

/** 'up to 10° inward, 10° outward'. */
export function limitsWords({ least, most }: CourseSet['limits']): string {
  return `${formatValue('knee-angle', most)}, ${formatValue('knee-angle', least)}`;
}

/** 'seat 46 cm, shoes, told only when out of line, easy bends filmed'. */
export function conditionsWords(conditions: SetConditions): string {
  const { footwear, feedback, bendsFilmed } = conditions;
  return [
    ...notedWords(conditions),
    footwear === null ? 'footwear not noted' : footwearWords[footwear],
    feedback === null ? 'feedback not noted' : feedbackWords[feedback],
    bendsFilmed ? 'easy bends filmed' : 'no easy bends',
  ].join(', ');
}

export function markSentence(mark: CourseMark): string {
  const day = dayWords(new Date(mark.atMs).toISOString());
  if (mark.kind === 'plan') return `${day}: a new plan`;
  const name = `${exerciseName(mark.task).toLowerCase()}, ${mark.side}`;
  return `${day}: other limits for ${name}: ${limitsWords(mark.to)}; before: ${limitsWords(mark.from)}`;
}
