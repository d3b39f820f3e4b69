import { saveReviewed } from '#features/review/store/saveReviewed';
import { explainProblem } from '#shell/explainProblem';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import type { HomeState } from './homeState';
import type { HomeStorage } from './homeStorage';
import { isFilmed } from './sessionOf';
import type { SetKeeper } from './setKeeper';

interface ReviewingParts {
  adapters: HomeAdapters;
  get: () => HomeState;
  set: (change: Partial<HomeState>) => void;
  storage: Pick<HomeStorage, 'repository' | 'pauseMeasuring' | 'resumeMeasuring'>;
  keeper: Pick<SetKeeper, 'recording' | 'keepVideo' | 'replace'>;
  /** Starts a separate session. */
  beginSession: () => void;
}

/** What leads out of the home session: the therapist's review, and files. */
export function reviewing({
  adapters,
  get,
  set,
  storage,
  keeper,
  beginSession,
}: ReviewingParts): Pick<HomeApp, 'reviewSet' | 'saveSetFile' | 'openOwnRecording'> {
  const { review } = adapters;
  /** What is kept of a set; null where only this page knows it. */
  const keptOf = async (id: string) => {
    const repository = await storage.repository;
    const facts = (await repository.recordings.findHead(id))?.facts;
    return facts === undefined ? null : { repository, facts };
  };

  return {
    async reviewSet(index) {
      const recording = keeper.recording(index);
      if (recording === null) return;
      set({ problem: null });
      const kept = await keptOf(recording.id).catch(() => null);
      try {
        if (kept === null) return review.openKept(recording, fileNameOf(recording), null);
        const { repository, facts } = kept;
        // Without its video the joints can still be viewed.
        const video =
          facts.video === null ? null : await repository.videos.read(facts.video).catch(() => null);
        review.openKept(recording, fileNameOf(recording), video, {
          session: null,
          async save(reviewed) {
            await saveReviewed(repository, reviewed, facts.fromVideo);
            const now = await repository.recordings.find(reviewed.id);
            if (now !== null) keeper.replace(now.recording, now.facts.fromVideo === 'done');
          },
          readOther: () => Promise.reject(new Error('Open the set from the kept sessions to compare.')),
        });
      } catch (error) {
        set({ problem: explainProblem(error, 'be opened') });
      }
    },
    saveSetFile(index) {
      const recording = keeper.recording(index);
      if (recording !== null) adapters.saveFile(fileNameOf(recording), JSON.stringify(recording));
    },
    async openOwnRecording(file) {
      const { step, steps, sets } = get();
      const filmed = steps.filter(isFilmed)[sets.length];
      if (step !== 'camera' || filmed === undefined || filmed.item.kind === 'hold') return;
      set({ problem: null });
      await storage.pauseMeasuring();
      try {
        const { task } = filmed.item;
        const tracked = await adapters.tracking.trackFile(file, { task, side: filmed.side });
        if (tracked === null) return;
        if (sets.length === 0) beginSession();
        keeper.keepVideo(steps.indexOf(filmed), tracked, file);
      } catch (error) {
        set({ problem: explainProblem(error, 'be tracked') });
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
