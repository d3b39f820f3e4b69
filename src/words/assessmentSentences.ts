import { alwaysEnds, type Assessment, type AssessmentUnit } from '#core/assessments/assessment';
import type { AssessmentChange } from '#core/assessments/assessmentChange';
import { findAssessment } from '#core/assessments/assessments';
import type { BalanceReach } from '#core/assessments/balanceReach';
import type { BendCount } from '#core/assessments/countInwardBends';
import type { RiseCount, RiseTest } from '#core/assessments/countRises';
import { effusionGrades, type EffusionGrade } from '#core/assessments/effusion';
import { miniSquatClass, type miniSquat } from '#core/assessments/miniSquat';
import {
  stepDownQuality,
  type StepDownObservation,
  type StepDownRating,
} from '#core/assessments/stepDownRating';
import { formatTime } from './formatTime';
import { oneDecimal } from './oneDecimal';

const unitWords: Record<Exclude<AssessmentUnit, 'grade'>, [one: string, many: string]> = {
  repetitions: ['repetition', 'repetitions'],
  points: ['point', 'points'],
  cm: ['cm', 'cm'],
  s: ['s', 's'],
  'N/kg': ['N/kg', 'N/kg'],
};

/** A result with its unit: '18 repetitions', 'effusion 1+'. */
export function resultWords({ unit, most }: Assessment, value: number): string {
  if (unit === 'grade') return effusionGrades[value] ?? String(value);
  const [one, many] = unitWords[unit];
  const end = value === most && unit !== 'points' ? ', where the test ends' : '';
  return `${oneDecimal(value)} ${value === 1 ? one : many}${end}`;
}

/** A result with its unit, and with the class that a published rule makes of it where there is one. */
export function classedResult(assessment: Assessment, value: number): string {
  const words = resultWords(assessment, value);
  if (assessment.id === 'step-down-quality') return `${words} of 6, ${stepDownQuality(value)}`;
  if (assessment.id === 'mini-squat')
    return `inward in ${oneDecimal(value)} of 5 bends, knee ${footWords(miniSquatClass(value))}`;
  return words;
}

const footWords = (found: 'over' | 'inward') => `${found === 'over' ? 'over' : 'inward of'} the foot`;

/** How the test is done, for whoever gives it; with what ends it, in any test the same first. */
export function protocolSentences({ protocol }: Assessment): string[] {
  const { fixed, steps, ends, tries, restSeconds } = protocol;
  const practice = tries.practice === 0 ? '' : `${tries.practice} to practise, then `;
  const taken = tries.counted === 1 ? '' : `; the ${tries.taken} of them counts`;
  const rest = restSeconds === 0 ? '' : ` Rest between tries and legs: ${restSeconds} s.`;
  return [
    `Write down: ${fixed.join('; ')}.`,
    'The uninvolved leg comes first, without feedback.',
    ...steps,
    `Each leg: ${practice}${tries.counted} that ${tries.counted === 1 ? 'counts' : 'count'}${taken}.${rest}`,
    `It ends with: ${[...alwaysEnds, ...ends].join('; ')}.`,
  ];
}

/** What may be said of both legs' results: the figures, what others found, and what the test does not tell. */
export function assessmentSentences(
  assessment: Assessment,
  results: { left: number | null; right: number | null },
): string[] {
  const { name, published, reliability, notTold } = assessment;
  const leg = (value: number | null) => (value === null ? 'not done' : classedResult(assessment, value));
  return [
    `${name}: left ${leg(results.left)}; right ${leg(results.right)}.`,
    ...(published.length === 0
      ? ['No norms known.']
      : published.map(
          ({ population, value, source }) => `Published for ${population}: ${value} (${source}).`,
        )),
    ...reliability.map((found) => `How far it repeats: ${found}.`),
    ...notTold,
  ];
}

/** Whether a leg's result changed. */
export function assessmentChangeSentence(assessment: Assessment, change: AssessmentChange): string {
  switch (change.kind) {
    case 'other-protocol':
      return `Not compared: one of these was different: ${change.fixed.join('; ')}.`;
    case 'other-rater':
      return 'Not compared: somebody else rated.';
    case 'no-error-known':
      return `A difference of ${differenceWords(assessment, change.difference)}. No error known: film or test it twice to find your own.`;
    case 'told': {
      const size = differenceWords(assessment, change.difference);
      const error = `error alone can make ${differenceWords(assessment, change.detectable)}`;
      return change.verdict === 'within-error'
        ? `No change beyond error: a difference of ${size}, and ${error}.`
        : `${change.verdict === 'higher' ? 'More' : 'Less'} than then by ${size}, beyond error: ${error}.`;
    }
  }
}

/** What a recording says of a test of rises, and what is still for the eye. */
export function riseCountSentences(test: RiseTest, count: RiseCount): string[] {
  if (count.kind !== 'counted') return [`Not counted: ${whyNotCounted(count)} Enter it by hand.`];
  const { value, from, notCounted, unseenOutside } = count;
  const result = resultWords(findAssessment(test), value);
  return [
    `${result}, from ${formatTime(from.fromMs)} to ${formatTime(from.toMs)} of the recording.`,
    ...(test === 'rise-five-times'
      ? ['Start and end are each found to about 0.2 s, as rendered clips with known times show.']
      : []),
    ...(notCounted.length === 0
      ? []
      : [
          `Not counted, since they did not come to standing or do not count by a correction: those at ` +
            `${notCounted.map(formatTime).join(', ')}. Look whether that is right.`,
        ]),
    ...(unseenOutside === null
      ? []
      : [
          `The hips are out of sight from ${formatTime(unseenOutside.fromMs)} to ${formatTime(unseenOutside.toMs)}: ` +
            'look whether more rises were made there.',
        ]),
    'The camera does not tell whether the other foot touched the floor, a hand helped, or the seat was only ' +
      'brushed. Look, and correct the number where that is so.',
  ];
}

function whyNotCounted(count: Exclude<RiseCount, { kind: 'counted' }>): string {
  switch (count.kind) {
    case 'none-complete':
      return 'no complete rise was found.';
    case 'other-leg':
      return 'it looks as if the other leg worked.';
    case 'not-seen':
      return `the hips are out of sight from ${formatTime(count.span.fromMs)} to ${formatTime(count.span.toMs)}.`;
    case 'cut-at-start':
      return 'the recording begins during a rise.';
    case 'cut-at-end':
      return 'the recording ends during a rise.';
    case 'too-short':
      return `the recording ends ${count.seconds} s after the start, and 30 s count.`;
    case 'too-few':
      return `only ${count.rises} of 5 rises are complete.`;
  }
}

/** What a recording says of a mini squat, and what is still for the eye. */
export function bendCountSentences(count: BendCount): string[] {
  if (count.kind === 'other-leg')
    return ['Not counted: it looks as if the other leg worked. Enter it by hand.'];
  if (count.kind === 'too-few-bends')
    return [`Not counted: only ${count.bends} of 5 bends are complete. Enter it by hand.`];
  const { bends, inward, found, more } = count;
  const at = (isInward: boolean | null) =>
    bends.filter((bend) => bend.isInward === isInward).map(({ startMs }) => formatTime(startMs));
  const [surely, unknown] = [at(true), at(null)];
  const deg = bends.flatMap(({ bendDeg }) => bendDeg ?? []);
  return [
    inward === null
      ? `Inward of the foot in ${surely.length} of 5 bends; can’t tell of those at ${unknown.join(', ')}. Look at them, and enter the number by hand.`
      : `Inward of the foot in ${inward} of 5 bends${surely.length === 0 ? '' : `: at ${surely.join(', ')}`}.`,
    ...(inward === null && found !== null
      ? [`Whichever way those are, it counts as knee ${footWords(found)}.`]
      : []),
    ...(deg.length === 0 ? [] : [`The knee bent to about ${rangeWords(deg)}; as published it is about 50°.`]),
    ...(more === 0 ? [] : [`Bends after the fifth do not count: ${more}.`]),
    'The line is the foot’s own, from heel to toes, where the eye takes the second toe. The camera does not tell ' +
      'whether the pace was kept or a hand helped.',
  ];
}

/** What was seen of a step-down, in the order in which it is rated; for the record. */
export function stepDownSeenWords(seen: StepDownObservation): string {
  const words = [
    ...(seen.armsUsed ? ['an arm was used'] : []),
    ...(seen.trunkLeaned ? ['the trunk leaned'] : []),
    ...(seen.pelvisLeftLevel ? ['the pelvis left level'] : []),
    ...(seen.kneeInward === 'none' ? [] : [`knee ${stepDownKneeWords[seen.kneeInward]}`]),
    ...(seen.unsteady ? ['unsteady'] : []),
  ];
  return words.length === 0 ? 'nothing of the list' : words.join(', ');
}

/** How far inward the bump below the kneecap went. */
export const stepDownKneeWords = {
  none: 'to the second toe at most',
  'beyond-second-toe': 'beyond the second toe',
  'beyond-inner-border': 'beyond the inner border of the foot',
} as const satisfies Record<StepDownObservation['kneeInward'], string>;

/** What a step-down was rated. */
export function stepDownSentence({ points, quality }: StepDownRating): string {
  return `Step-down by eye: ${points} of 6 points, ${quality}.`;
}

/** How far a leg reached. */
export function reachSentence(reach: BalanceReach): string {
  const [front, inward, outward, composite] = [
    reach.frontPct,
    reach.backInwardPct,
    reach.backOutwardPct,
    reach.compositePct,
  ].map(Math.round);
  return (
    `Balance reach, in percent of leg length: front ${front}, backwards across ${inward}, backwards outward ` +
    `${outward}; mean ${composite}.`
  );
}

/** Which class a mini squat belongs to. */
export function miniSquatSentence(found: ReturnType<typeof miniSquat>): string {
  if (found === null) return 'Mini squat: not measured. Too few bends were seen; film it again.';
  return `Mini squat: knee ${footWords(found)}.`;
}

/** Two examinations of one knee; two raters are often a grade apart. */
export function effusionSentence(earlier: EffusionGrade, later: EffusionGrade): string {
  return `Effusion ${earlier} then, ${later} now.`;
}

function differenceWords({ unit }: Assessment, difference: number): string {
  const size = Math.abs(difference);
  const [one, many] = unit === 'grade' ? ['grade', 'grades'] : unitWords[unit];
  return `${oneDecimal(size)} ${size === 1 ? one : many}`;
}

/** '48° to 52°', or '50°' where all are alike. */
function rangeWords(deg: readonly number[]): string {
  const [least, most] = [Math.round(Math.min(...deg)), Math.round(Math.max(...deg))];
  return least === most ? `${most}°` : `${least}° to ${most}°`;
}
