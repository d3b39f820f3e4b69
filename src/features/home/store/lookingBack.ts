import type { SessionDocument } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';
import { changeSinceLast } from './changeSinceLast';
import type { HomeApp } from './homeApp';
import { partOf } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import { pastSets } from './pastSets';

interface LookingBackParts {
  home: HomeStore;
  storage: Pick<HomeStorage, 'repository' | 'sessions'>;
  /** The session so far. */
  session: () => SessionDocument;
}

/** How the last session went, and what is different now. */
export function lookingBack({ home, storage, session }: LookingBackParts): Pick<HomeApp, 'showLastTime'> {
  const { store, get, set, enter, change } = home;
  const changeOf = async (one: SessionDocument) => {
    const plan = get().plan ?? get().plans?.find(({ id }) => id === one.planId);
    if (plan === undefined) return null;
    const { recordings } = await storage.repository;
    return changeSinceLast(one, await storage.sessions(), plan, recordings).catch(() => null);
  };

  store.subscribe((state, before) => {
    const { told } = partOf(state, 'summary');
    if (told === null || told === partOf(before, 'summary').told) return;
    void changeOf(session()).then((found) => {
      if (partOf(get(), 'summary').told === told) change('summary', { change: found });
    });
  });

  return {
    async showLastTime() {
      const [plan] = get().plans ?? [];
      const { last } = get().today;
      if (get().step !== 'plan' || plan === undefined || last === null) return;
      set({ problem: null });
      try {
        const { sessions, recordings } = await storage.repository;
        const found = await sessions.find(last.id);
        if (found === null) return;
        const told = await pastSets(found, plan, recordings);
        if (get().step === 'plan') enter('past', { session: found, told, change: await changeOf(found) });
      } catch (error) {
        set({ problem: explainProblem(error, 'open') });
      }
    },
  };
}
