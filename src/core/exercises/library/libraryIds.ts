import { exercises, type ExerciseId } from '../exercises';

/** In the order in which a treatment usually goes through them. */
export const libraryIds: readonly ExerciseId[] = exercises
  .toSorted((a, b) => a.treatmentOrder - b.treatmentOrder)
  .map(({ id }) => id);
