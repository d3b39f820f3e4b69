import { completeRepetitions } from '#documents/recording/completeRepetitions';
import { explainProblem } from '#shell/explainProblem';
import { recordingRecording } from '#shell/tracking/shownRecording';
import { pickReplays, type ReplaySet } from '../rules/pickReplays';
import type { HomeApp } from './homeApp';
import { partOf, type HomeSet, type Replay } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import type { SetKeeper } from './setKeeper';

interface ReplayingParts {
  home: HomeStore;
  storage: Pick<HomeStorage, 'repository'>;
  keeper: Pick<SetKeeper, 'recording'>;
}

/** Repetitions in slow motion, once the result is there. */
export function replaying({ home, storage, keeper }: ReplayingParts): Pick<HomeApp, 'showReplay'> {
  const { store, get, set, change } = home;
  const documentOf = (id: string) =>
    keeper.recording(get().sets.findIndex(({ recordingId }) => recordingId === id));
  const videoOf = async (id: string): Promise<string | null> =>
    (await (await storage.repository).recordings.findHead(id))?.facts.video ?? null;

  /** Looks for what can be shown: only sets whose video is kept. */
  const offer = async (told: readonly HomeSet[]) => {
    const sets: ReplaySet[] = [];
    for (const { recordingId } of told) {
      const recording = recordingId === null ? null : documentOf(recordingId);
      if (recording === null || (await videoOf(recording.id).catch(() => null)) === null) continue;
      sets.push({
        recordingId: recording.id,
        repetitions: completeRepetitions(recording.derived.repetitions),
      });
    }
    if (partOf(get(), 'summary').told === told) change('summary', { replays: pickReplays(sets) });
  };
  store.subscribe((state, before) => {
    const { told } = partOf(state, 'summary');
    if (told !== null && told !== partOf(before, 'summary').told) void offer(told);
  });

  const open = async (id: string): Promise<Pick<Replay, 'recording' | 'limits'>> => {
    const name = await videoOf(id);
    const video = name === null ? null : await (await storage.repository).videos.read(name);
    const document = documentOf(id)!;
    const recording = recordingRecording(document, { origin: 'session', fileName: '', video });
    return { recording, limits: document.limits };
  };

  return {
    async showReplay() {
      const { replays } = partOf(get(), 'summary');
      set({ problem: null });
      try {
        const opened = new Map<string, Pick<Replay, 'recording' | 'limits'>>();
        for (const { recordingId } of replays)
          if (!opened.has(recordingId)) opened.set(recordingId, await open(recordingId));
        const shown = replays.map((pick) => ({ ...pick, ...opened.get(pick.recordingId)! }));
        if (shown.length > 0) change('summary', { page: 'replay', shown });
      } catch (error) {
        set({ problem: explainProblem(error, 'open') });
      }
    },
  };
}
