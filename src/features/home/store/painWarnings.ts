import { cautionsOf, mayGoOnWith, painAdvice, saidBy } from '#documents/plan/cautions';
import { painWarningOf, type PainWarning } from './homeState';
import type { HomeStore } from './homeStore';

/** More than anybody goes on in one session; as many as its document holds. */
const mostWentOn = 100;

/** Warns of pain scores above the limit of the plan. */
export interface PainWarnings {
  /** Null where the score is within the limit. */
  of(when: PainWarning['when'], score: number): PainWarning | null;
  /** Replaces the current warning, during the exercise and after it. */
  put(warning: PainWarning | null): void;
  /** Writes down that the person goes on in spite of it, since the plan allows it and they were told to. */
  goOn(warning: PainWarning, now: Date): void;
  /** Whether a warning from a set is current. */
  isOfSet(): boolean;
}

export function createPainWarnings({ get, set, change }: HomeStore): PainWarnings {
  return {
    of(when, score) {
      const cautions = cautionsOf(get().plan);
      const advice = painAdvice(when, score, cautions);
      if (advice === null) return null;
      const words = saidBy(cautions, cautions.beyondPainLimit);
      return { when, score, advice, words, mayGoOn: mayGoOnWith(score, cautions) };
    },
    put(painWarning) {
      change('exercise', { painWarning });
      change('after', { painWarning });
    },
    goOn({ when, score }, now) {
      if (when === 'after') return;
      const { painLimit: limit } = cautionsOf(get().plan);
      const went = { when, score, limit, at: now.toISOString() };
      set({ wentOnAbove: [...get().wentOnAbove, went].slice(-mostWentOn) });
    },
    isOfSet: () => painWarningOf(get())?.when === 'during',
  };
}
