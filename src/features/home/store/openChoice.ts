import { Problem } from '#core/problem';
import { storageProblem } from '#device/storage/storageProblem';
import { freeRecording, type FreeChoice } from '#documents/plan/freeRecording';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { planFromFragment } from '#documents/plan/planLink';
import { largestPlanBytes } from '#documents/plan/planRanges';
import { planSteps } from '#documents/plan/planSteps';
import { explainProblem } from '#shell/explainProblem';
import type { HomeAdapters } from './homeAdapters';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';

interface ChoiceParts {
  adapters: HomeAdapters;
  home: HomeStore;
  storage: HomeStorage;
}

/** The ways to choose what is done: a plan, or a recording without one. */
export function openChoice({ adapters, home, storage }: ChoiceParts) {
  const { get, set, change, enter } = home;
  /** Incremented with every choice: a plan that opens late does not take the place of a later one. */
  let turn = 0;

  /** The plan being viewed; it is not saved before somebody accepts it. */
  let unkept: PlanDocument | null = null;

  const choose = (plan: PlanDocument | null, items: readonly PlanItem[]) => {
    const { storage: kept } = get();
    if (kept.state === 'blocked') {
      return set({ problem: { title: 'You cannot start yet', sentence: kept.sentence } });
    }
    enter('overview', {}, { plan, steps: planSteps(items), painBefore: null });
  };
  const open = async (read: () => Promise<string | PlanDocument>, isKept: boolean) => {
    if (get().step !== 'plan') return;
    const mine = ++turn;
    change('plan', { isOpening: true });
    set({ problem: null });
    try {
      const found = await read();
      const plan = typeof found === 'string' ? parsePlan(found) : found;
      if (mine !== turn) return;
      choose(plan, plan.items);
      unkept = isKept ? null : plan;
    } catch (error) {
      if (mine === turn) set({ problem: explainProblem(error, 'be opened') });
    } finally {
      if (mine === turn) change('plan', { isOpening: false });
    }
  };

  return {
    openPlan: {
      fromFile: (file: File) =>
        open(() => {
          if (file.size > largestPlanBytes) {
            throw new Problem(
              'plan',
              'This file is too large for a plan. Choose the plan file that you were given.',
            );
          }
          return file.text();
        }, false),
      fromLink: (fragment: string) => open(async () => planFromFragment(fragment), false),
      example: () => open(adapters.fetchExamplePlan, true),
      kept: (id: string) =>
        open(async () => {
          const text = await (await storage.repository).plans.find(id);
          if (text === null) throw storageProblem('missing');
          return text;
        }, true),
    },
    /** Saves the accepted plan; one that can't be saved is opened from its file or link the next time. */
    keepChosen() {
      const plan = unkept;
      unkept = null;
      if (plan === null) return;
      void storage.repository
        .then((kept) => kept.plans.save(plan.id, JSON.stringify(plan)))
        .catch(() => undefined);
    },
    startFree(choice: FreeChoice) {
      if (get().step !== 'plan') return;
      turn++;
      unkept = null;
      change('plan', { isOpening: false });
      set({ problem: null });
      choose(null, [freeRecording(choice)]);
    },
  };
}
