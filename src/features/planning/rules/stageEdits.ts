import { findExercise, type ExerciseId } from '#core/exercises/exercises';
import { towardsFifteen } from '#core/exercises/stage';
import type { AnyStage } from '#documents/library/stages';
import { upToOf } from '#documents/plan/itemProgress';
import type { PlanItem } from '#documents/plan/planDocument';
import { planBounds } from '#documents/plan/planRanges';

/** The stages with other words for one of them; its figures stay. */
export function renamed(stages: readonly AnyStage[], id: string, words: string): AnyStage[] {
  return stages.map((stage) => (stage.id === id ? { ...stage, words } : stage));
}

/** The stages with one of them a place nearer to the easiest (-1) or the hardest (1). */
export function moved(stages: readonly AnyStage[], id: string, by: -1 | 1): AnyStage[] {
  const at = stages.findIndex((stage) => stage.id === id);
  const to = at + by;
  const one = stages[at];
  if (one === undefined || to < 0 || to >= stages.length) return [...stages];
  return stages.filter((stage) => stage !== one).toSpliced(to, 0, one);
}

/** The stages without one of them; the last one stays. */
export function without(stages: readonly AnyStage[], id: string): AnyStage[] {
  return stages.length === 1 ? [...stages] : stages.filter((stage) => stage.id !== id);
}

/**
 * The stages with a harder one at the end, whose figures are those that an item has now.
 *
 * @param words  what is done, for the therapist
 */
export function withStage(stages: readonly AnyStage[], item: PlanItem, words: string): AnyStage[] {
  const { bendDeg, support, load } = item;
  const common = {
    id: newId(item.task, stages, words),
    words,
    ...(bendDeg === null ? {} : { bendDeg }),
    ...(support === null ? {} : { support }),
    ...(load === null ? {} : { load }),
  };
  if (item.kind === 'hold')
    return [...stages, { ...common, holds: { count: item.holds, seconds: item.holdSeconds } }];
  const { seatHeightCm, stepHeightCm, tempo, repetitions } = item;
  const { upTo } = towardsFifteen;
  const least = Math.max(repetitions, upTo.min);
  return [
    ...stages,
    {
      ...common,
      ...(seatHeightCm === null ? {} : { seatHeightCm }),
      ...(stepHeightCm === null ? {} : { stepHeightCm }),
      ...(tempo === null
        ? {}
        : { tempo: { downSeconds: tempo.downSeconds, pauseSeconds: tempo.pauseSeconds } }),
      start: repetitions,
      upTo: upToOf(item) ?? { min: least, max: least },
    },
  ];
}

/** Readable, since plans and sessions keep it; like none of the practice's and none of the program's. */
function newId(task: ExerciseId, stages: readonly AnyStage[], words: string): string {
  const taken = [...stages, ...findExercise(task).stages].map(({ id }) => id);
  const base =
    words
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '')
      .slice(0, planBounds.stage - 4) || 'stage';
  if (!taken.includes(base)) return base;
  let number = 2;
  while (taken.includes(`${base}-${number}`)) number++;
  return `${base}-${number}`;
}
