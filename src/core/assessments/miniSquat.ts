/** Bends inward from which a mini squat counts as one with the knee inward. Source: Ageberg 2010 (from memory) */
export const inwardBends = 3;

/** The class of five bends that were all seen. */
export function miniSquatClass(inward: number): 'over' | 'inward' {
  return inward >= inwardBends ? 'inward' : 'over';
}

/**
 * Which of the two classes a mini squat belongs to.
 *
 * @param isInward  of each of five bends, whether the knee went inward of the foot; null where it was not seen
 * Missing: null where the bends not seen could decide it either way
 * @throws  RangeError unless there are five
 */
export function miniSquat(isInward: readonly (boolean | null)[]): 'over' | 'inward' | null {
  if (isInward.length !== 5) throw new RangeError(`A mini squat has 5 bends, got ${isInward.length}.`);
  const inward = isInward.filter((each) => each === true).length;
  const unseen = isInward.filter((each) => each === null).length;
  if (inward >= inwardBends) return 'inward';
  return inward + unseen >= inwardBends ? null : 'over';
}
