import { cautionsOf, painAdvice } from '#documents/plan/cautions';
import { painWarningOf, type PainWarning } from './homeState';
import type { HomeStore } from './homeStore';

/** Warns of pain scores above the limit of the plan. */
export interface PainWarnings {
  /** Null where the score is within the limit. */
  of(when: PainWarning['when'], score: number): PainWarning | null;
  /** Puts one in the place of the one that stood, during the exercise and after it. */
  put(warning: PainWarning | null): void;
  /** Whether one stands that a set has brought. */
  isOfSet(): boolean;
}

export function createPainWarnings({ get, change }: HomeStore): PainWarnings {
  return {
    of(when, score) {
      const advice = painAdvice(score, cautionsOf(get().plan));
      return advice === null ? null : { when, score, advice };
    },
    put(painWarning) {
      change('exercise', { painWarning });
      change('after', { painWarning });
    },
    isOfSet: () => painWarningOf(get())?.when === 'during',
  };
}
