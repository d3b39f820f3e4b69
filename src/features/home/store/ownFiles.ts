import { explainProblem } from '#shell/explainProblem';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import type { HomeState } from './homeState';
import type { HomeStorage } from './homeStorage';
import { isFilmed } from './sessionOf';
import type { SetKeeper } from './setKeeper';

interface OwnFilesParts {
  adapters: HomeAdapters;
  get: () => HomeState;
  set: (change: Partial<HomeState>) => void;
  storage: Pick<HomeStorage, 'pauseMeasuring' | 'resumeMeasuring'>;
  keeper: Pick<SetKeeper, 'recording' | 'keepVideo' | 'settled'>;
  /** The session's time begins now. */
  restartClock: () => void;
}

/** Files that are taken into a home session, and out of it. */
export function ownFiles({
  adapters,
  get,
  set,
  storage,
  keeper,
  restartClock,
}: OwnFilesParts): Pick<HomeApp, 'saveSetFile' | 'openOwnRecording'> {
  /** Files that are being taken in. */
  let taking = 0;
  return {
    saveSetFile(index) {
      const recording = keeper.recording(index);
      if (recording === null) return;
      const { createdAt, setup } = recording;
      const fileName = `overfoot-session-${createdAt.slice(0, 10)}-${setup.task}-${setup.side}.json`;
      adapters.saveFile(fileName, JSON.stringify(recording));
    },
    async openOwnRecording(file) {
      const { step, steps, sets } = get();
      const filmed = steps.filter(isFilmed)[sets.length];
      if (step !== 'camera' || filmed === undefined || filmed.item.kind === 'hold') return;
      set({ problem: null });
      taking++;
      await storage.pauseMeasuring();
      try {
        const { task } = filmed.item;
        const tracked = await adapters.tracking.trackFile(file, { task, side: filmed.side });
        if (tracked === null) return;
        if (sets.length === 0) restartClock();
        keeper.keepVideo(steps.indexOf(filmed), tracked, file);
      } catch (error) {
        set({ problem: explainProblem(error, 'track') });
      } finally {
        // What waits to be measured is looked for once it is kept.
        await keeper.settled();
        if (--taking === 0) storage.resumeMeasuring();
      }
    },
  };
}
