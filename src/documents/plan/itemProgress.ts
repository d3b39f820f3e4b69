import { findExercise } from '#core/exercises/exercises';
import type { HoldStage, RepetitionStage } from '#core/exercises/stage';
import type { HoldItem, PlanDocument, PlanItem, RepetitionItem, Tempo } from './planDocument';

type Progress = Pick<
  RepetitionItem,
  'stage' | 'load' | 'support' | 'bendDeg' | 'sidesInTurn' | 'perWeek' | 'stepHeightCm' | 'upTo'
>;

/** A tempo to begin with; common practice, no source. */
export const usualTempo: Tempo = { downSeconds: 2, pauseSeconds: 1, upSeconds: 2 };

/** A hold of which nothing but its dose is said. */
export const holdWithoutProgress = {
  stage: null,
  load: null,
  support: null,
  bendDeg: null,
  sidesInTurn: false,
  perWeek: null,
} as const satisfies Pick<HoldItem, Exclude<keyof Progress, 'stepHeightCm' | 'upTo'>>;

/** A repeated task of which nothing but its dose, tempo, seat and limits is said. */
export const withoutProgress = {
  ...holdWithoutProgress,
  stepHeightCm: null,
  upTo: null,
} as const satisfies Progress;

/** Of a plan that holds nothing but items of the library, and leaves the rules for what to do next as they are. */
export const planWithoutProgress = {
  freeItems: [],
  autoStep: 'propose',
  thresholds: {},
} as const satisfies Pick<PlanDocument, 'freeItems' | 'autoStep' | 'thresholds'>;

/** An item of before version 7, of which all this is left open; anything else as it is. */
export function withProgress<Item extends object>(item: Item): Item & Partial<Progress> {
  const nothing = 'kind' in item && item.kind === 'hold' ? holdWithoutProgress : withoutProgress;
  return { ...nothing, ...item };
}

/** The stage at which an item stands; null where it has none, or one that the library does not know. */
export function stageOf({
  task,
  stage,
}: Pick<PlanItem, 'task' | 'stage'>): RepetitionStage | HoldStage | null {
  return findExercise(task).stages.find(({ id }) => id === stage) ?? null;
}

/**
 * An item put at a stage: its figures are the stage's, its repetitions those that the stage begins with. What the
 * stage leaves open is left open, and what it says nothing of (side, sets, rest, limits) stays.
 *
 * @param stage  one of the exercise's, or of the practice's own; null: none, with the figures left as they are
 */
export function atStage<Item extends PlanItem>(item: Item, stage: RepetitionStage | HoldStage | null): Item {
  if (stage === null) return { ...item, stage: null };
  const { id, seatHeightCm, stepHeightCm, bendDeg, support, load, tempo } = stage;
  const common = { stage: id, bendDeg: bendDeg ?? null, support: support ?? null, load: load ?? null };
  if (item.kind === 'hold') {
    const { count, seconds } =
      'holds' in stage ? stage.holds : { count: item.holds, seconds: item.holdSeconds };
    return { ...item, ...common, holds: count, holdSeconds: seconds };
  }
  return {
    ...item,
    ...common,
    seatHeightCm: seatHeightCm ?? null,
    stepHeightCm: stepHeightCm ?? null,
    tempo: tempo === undefined ? null : { ...usualTempo, ...tempo },
    repetitions: 'start' in stage ? stage.start : item.repetitions,
    upTo: ownUpTo(item.task, stage),
  };
}

/**
 * How far a set goes at a stage of the practice's own, which has to be said in the plan, since the patient's device
 * does not know it; null for one of the library.
 */
export function ownUpTo(task: PlanItem['task'], stage: RepetitionStage | HoldStage): RepetitionItem['upTo'] {
  const isOfLibrary = stageOf({ task, stage: stage.id }) !== null;
  return isOfLibrary || !('upTo' in stage) ? null : stage.upTo;
}

/**
 * How far repetitions of a set go before the next stage, and at most: as the item says, else its stage, else the
 * exercise's dose; null where none of them does.
 */
export function upToOf({ task, stage, upTo }: Pick<RepetitionItem, 'task' | 'stage' | 'upTo'>): {
  min: number;
  max: number;
} | null {
  if (upTo !== null) return upTo;
  const known = stageOf({ task, stage });
  if (known !== null && 'upTo' in known) return known.upTo;
  const exercise = findExercise(task);
  return exercise.kind === 'task' ? exercise.dose.worksUpTo : null;
}
