import { explainProblem } from '../explainProblem';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import type { HomeState } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { SetKeeper } from './setKeeper';
import { isFilmed } from './visitOf';

interface ReviewingParts {
  adapters: HomeAdapters;
  get: () => HomeState;
  set: (change: Partial<HomeState>) => void;
  storage: Pick<HomeStorage, 'repository'>;
  keeper: Pick<SetKeeper, 'session'>;
}

/** What leads out of the home session: the therapist's review, and files. */
export function reviewing({
  adapters,
  get,
  set,
  storage,
  keeper,
}: ReviewingParts): Pick<HomeApp, 'reviewSet' | 'saveSetFile' | 'openOwnRecording'> {
  const { app } = adapters;
  /** What went wrong in the rest of the program while this session is shown is told here. */
  const takeProblem = () => {
    const { problem, screen } = app.store.getState();
    if (problem === null || screen !== 'home') return;
    app.dismissProblem();
    set({ problem });
  };
  const videoOf = async (id: string): Promise<File | null> => {
    const repository = await storage.repository;
    const name = (await repository.sessions.find(id))?.facts.video ?? null;
    return name === null ? null : repository.videos.read(name);
  };

  return {
    async reviewSet(index) {
      const session = keeper.session(index);
      if (session === null) return;
      // Without its video the joints can still be looked at.
      const video = await videoOf(session.id).catch(() => null);
      app.openKept(JSON.stringify(session), fileNameOf(session), video);
      takeProblem();
    },
    saveSetFile(index) {
      const session = keeper.session(index);
      if (session !== null) adapters.saveFile(fileNameOf(session), JSON.stringify(session));
    },
    async openOwnRecording(file) {
      const { guide, steps } = get();
      const step = guide?.step ?? steps.find(isFilmed);
      if (step === undefined || step.item.kind === 'hold') return;
      try {
        app.setTask(step.item.task);
        app.setSide(step.side);
        await app.openFile(file);
        if (app.store.getState().problem === null && app.store.getState().chosen !== null)
          await app.startTracking();
        takeProblem();
      } catch (error) {
        set({ problem: explainProblem(error, 'be opened') });
      }
    },
  };
}

function fileNameOf({
  createdAt,
  setup,
}: {
  createdAt: string;
  setup: { task: string; side: string };
}): string {
  return `overfoot-session-${createdAt.slice(0, 10)}-${setup.task}-${setup.side}.json`;
}
