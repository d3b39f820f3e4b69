import type { Need } from './needs';

/** How to get ready for an exercise alone; what is said of it is in `words/messages`. */
export interface Preparation {
  needs: readonly Need[];
  /** Whether a camera is needed. */
  isFilmed: boolean;
  /** How a set begins; 'as-shown' where none of it can be seen from outside. */
  start: 'seated' | 'standing' | 'as-shown';
  /**
   * Whether it begins with two easy two-legged bends: where the person stands on one foot, its own movement shows
   * little of how the body is turned (docs/view.md).
   */
  easyBends: boolean;
}
