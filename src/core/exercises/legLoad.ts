import type { ExerciseId } from './exercises';

/** How much of the body's weight a leg bears at most: all of it at times, a part, or none. */
export type Bearing = 'all' | 'part' | 'none';

/** What an exercise asks of one leg. */
export interface LegLoad {
  bears: Bearing;
  /** Whether the knee bends as far as the exercise goes. */
  bends: boolean;
}

const pair = (bears: Bearing, bends: boolean): Record<'working' | 'other', LegLoad> => ({
  working: { bears, bends },
  other: { bears, bends },
});
const free: LegLoad = { bears: 'none', bends: false };
const onOneLeg = { working: { bears: 'all', bends: true }, other: free } as const;

/** Of each leg. Common practice, no source: what the exercise is made for, not what somebody does. */
const loads: Record<ExerciseId, Record<'working' | 'other', LegLoad>> = {
  'split-stance-sit-to-stand': pair('part', true),
  'single-leg-sit-to-stand': onOneLeg,
  'single-leg-squat': onOneLeg,
  'sliding-leg-squat': { ...onOneLeg, other: { bears: 'part', bends: false } },
  'lateral-step-down': { ...onOneLeg, other: { bears: 'part', bends: false } },
  'hip-abduction-on-bent-leg': onOneLeg,
  'two-legged-bend': pair('part', true),
  'quad-press-hold': { working: free, other: free },
  'bridge-hold': pair('part', true),
  'side-bridge-hold': pair('part', true),
  'single-leg-stance-hold': { working: { bears: 'all', bends: false }, other: free },
  'wall-sit-hold': pair('part', true),
};
/** Stages in which a leg bears more than in the others of the exercise. */
const heavierStages: readonly [exercise: ExerciseId, stage: string, working: Bearing, other: Bearing][] = [
  ['split-stance-sit-to-stand', 'lower-on-one', 'all', 'part'],
  ['quad-press-hold', 'standing-30', 'part', 'all'],
];

/** What an exercise asks of the leg that works, and of the other one. */
export function legLoad(exercise: ExerciseId, stage: string | null): Record<'working' | 'other', LegLoad> {
  const { working, other } = loads[exercise];
  const heavier = heavierStages.find(([id, at]) => id === exercise && at === stage);
  if (heavier === undefined) return { working, other };
  const [, , worksWith, standsWith] = heavier;
  return { working: { ...working, bears: worksWith }, other: { ...other, bears: standsWith } };
}
