import type { ConditionComparison, ConditionDifference } from '#core/conditions/compareConditions';
import type { ConditionId, SetConditions } from '#core/conditions/setConditions';
import { findTask } from '#core/exercises/exercises';
import type { FeedbackMode } from '#core/protocol/feedback';
import type { Load } from '#core/protocol/load';
import type { Support } from '#core/protocol/support';
import { exerciseName } from './exerciseWords';

/** What the two sets are called: 'then' and 'now', or 'left' and 'right'. */
export interface PairNames {
  earlier: string;
  later: string;
}
export const thenAndNow: PairNames = { earlier: 'then', later: 'now' };

const nameWords: Record<ConditionId, string> = {
  task: 'exercise',
  side: 'leg',
  stage: 'stage',
  seatHeightCm: 'seat',
  stepHeightCm: 'step',
  support: 'support',
  load: 'load',
  footwear: 'footwear',
  freeLeg: 'other leg',
  feedback: 'feedback',
  bendsFilmed: 'easy bends',
  isTest: 'kind of set',
  measuringVersion: 'measuring version',
};
const supportWords: Record<Support, string> = { none: 'none', fingertip: 'a fingertip', hand: 'a hand' };
const feedbackWords: Record<FeedbackMode, string> = {
  'every-repetition': 'after every repetition',
  'only-outside': 'only out of line',
  'after-the-set': 'after the set',
  none: 'none',
};
const loadWords = { loop: 'loop', tube: 'tube', weight: 'weight' } as const;
const placeWords = { 'above-knees': 'above the knees', ankle: 'at the ankle', hand: 'in the hand' } as const;

const valueWords: { [Id in ConditionId]: (value: NonNullable<SetConditions[Id]>) => string } = {
  task: (id) => exerciseName(id).toLowerCase(),
  side: (side) => side,
  stage: (id) => `“${id.replaceAll('-', ' ')}”`,
  seatHeightCm: (cm) => `${cm} cm`,
  stepHeightCm: (cm) => `${cm} cm`,
  support: (support) => supportWords[support],
  load: loadPhrase,
  footwear: (footwear) => (footwear === 'shoes' ? 'shoes' : 'bare feet'),
  freeLeg: (freeLeg) => (freeLeg === 'front' ? 'in front' : freeLeg),
  feedback: (feedback) => feedbackWords[feedback],
  bendsFilmed: (filmed) => (filmed ? 'filmed' : 'not filmed'),
  isTest: (isTest) => (isTest ? 'test' : 'training'),
  measuringVersion: String,
};

function loadPhrase(load: Load): string {
  return load.kind === 'none'
    ? 'none'
    : [load.level.trim(), loadWords[load.kind], placeWords[load.where]]
        .filter((word) => word !== '')
        .join(' ');
}

/**
 * Why two sets are not compared, and what was noted of neither; empty where nothing has to be said.
 *
 * @param what  what is not compared, after 'Not compared': ' with Fri 3 Apr 2026', or nothing
 */
export function conditionSentences(
  { differences, notNoted }: ConditionComparison,
  what = '',
  names: PairNames = thenAndNow,
): string[] {
  const sentences: string[] = [];
  if (differences.length > 0) {
    const said = differences.map((difference) => differencePhrase(difference, names));
    sentences.push(`Not compared${what}: ${said.join('; ')}.`);
  }
  if (differences.some(({ condition }) => condition === 'measuringVersion'))
    sentences.push('Measure both recordings again with one version first.');
  if (notNoted.length > 0)
    sentences.push(`Not noted of either set: ${notNoted.map((id) => nameWords[id]).join(', ')}.`);
  return sentences;
}

/** What was noted of how a set was done: 'stage 2 of 4', 'seat 46 cm', 'support a hand'. */
export function notedWords(conditions: SetConditions): string[] {
  const noted = ['stage', 'seatHeightCm', 'stepHeightCm', 'support', 'load', 'freeLeg'] as const;
  return noted.flatMap((id) => {
    const value = conditions[id];
    if (value === null || value === 'none' || (typeof value === 'object' && value.kind === 'none')) return [];
    const said = id === 'stage' ? stagePlace(conditions) : null;
    return [`${nameWords[id]} ${said ?? (valueWords[id] as (known: typeof value) => string)(value)}`];
  });
}

/** '2 of 4'; null where the library has no such stage. */
function stagePlace({ task, stage }: Pick<SetConditions, 'task' | 'stage'>): string | null {
  const { stages } = findTask(task);
  const index = stages.findIndex(({ id }) => id === stage);
  return index < 0 ? null : `${index + 1} of ${stages.length}`;
}

/** 'seat 50 cm then, 46 cm now' */
function differencePhrase({ condition, earlier, later }: ConditionDifference, names: PairNames): string {
  const said = (value: SetConditions[ConditionId]) =>
    value === null ? 'not noted' : (valueWords[condition] as (known: typeof value) => string)(value);
  return `${nameWords[condition]} ${said(earlier)} ${names.earlier}, ${said(later)} ${names.later}`;
}
