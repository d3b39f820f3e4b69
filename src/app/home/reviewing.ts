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
  storage: Pick<HomeStorage, 'repository' | 'pauseMeasuring' | 'resumeMeasuring'>;
  keeper: Pick<SetKeeper, 'session' | 'keepVideo'>;
  /** What follows belongs to a visit of its own. */
  beginVisit: () => void;
}

/** What leads out of the home session: the therapist's review, and files. */
export function reviewing({
  adapters,
  get,
  set,
  storage,
  keeper,
  beginVisit,
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
    const name = (await repository.sessions.findHead(id))?.facts.video ?? null;
    return name === null ? null : repository.videos.read(name);
  };

  /** The recording of the video that was opened last; null where it was none, or tracking did not come to its end. */
  const trackChosen = async () => {
    const { problem, chosen } = app.store.getState();
    if (problem !== null || chosen === null) return null;
    const before = app.recording();
    await app.startTracking();
    const tracked = app.recording();
    return tracked === before ? null : tracked;
  };

  return {
    async reviewSet(index) {
      const session = keeper.session(index);
      if (session === null) return;
      // Without its video the joints can still be looked at.
      const video = await videoOf(session.id).catch(() => null);
      app.openKept(session, fileNameOf(session), video);
      takeProblem();
    },
    saveSetFile(index) {
      const session = keeper.session(index);
      if (session !== null) adapters.saveFile(fileNameOf(session), JSON.stringify(session));
    },
    async openOwnRecording(file) {
      const { step, steps, sets } = get();
      const filmed = steps.filter(isFilmed)[sets.length];
      if (step !== 'camera' || filmed === undefined || filmed.item.kind === 'hold') return;
      set({ problem: null });
      await storage.pauseMeasuring();
      try {
        app.setTask(filmed.item.task);
        app.setSide(filmed.side);
        await app.openFile(file);
        const tracked = await trackChosen();
        if (tracked === null) return takeProblem();
        if (sets.length === 0) beginVisit();
        keeper.keepVideo(steps.indexOf(filmed), tracked, file);
        app.show('home');
      } catch (error) {
        set({ problem: explainProblem(error, 'be opened') });
      } finally {
        storage.resumeMeasuring();
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
