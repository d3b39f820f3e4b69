import type { Task } from '../exercises/exercises';

/** Within this share of the movement from either end the body counts as resting there or as fully at the far end. */
const endShare = 0.12;

/** Where a movement is at rest, and where at its far end. */
export interface RestMoments {
  /** 1 a sample where the person stands upright. */
  upright: Uint8Array;
  /** 1 a sample where the knees are bent most: seated, or at the bottom. */
  bent: Uint8Array;
}

/** @param excursion  0 at rest and 1 at the far end; null where nothing moves */
export function restMoments(
  { shape }: Pick<Task, 'shape'>,
  excursion: Float64Array | null,
  samples: number,
): RestMoments {
  const rest = new Uint8Array(samples);
  const far = new Uint8Array(samples);
  excursion?.forEach((value, i) => {
    if (value < endShare) rest[i] = 1;
    if (value > 1 - endShare) far[i] = 1;
  });
  return shape === 'rise' ? { upright: far, bent: rest } : { upright: rest, bent: far };
}
