import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { summariseSet } from '../guide/summariseSet';
import type { HomeSet } from './homeState';
import type { HomeStore } from './homeStore';

/** The sets of a session as the state shows them, with their recordings. */
export interface HomeSets {
  add(sets: readonly Pick<HomeSet, 'item' | 'result' | 'recordingId' | 'keeping'>[]): void;
  change(index: number, changed: Partial<HomeSet>): void;
  /** Shows what was found in the recording of a set. */
  show(index: number, recording: RecordingDocument, isFromVideo: boolean): void;
  /** The recording of a set, from this session; null where there is none. */
  recording(index: number): RecordingDocument | null;
  /** Replaces the recording of the same id with one that was measured again or reviewed. */
  replace(recording: RecordingDocument, isFromVideo: boolean): void;
  forget(): void;
}

export function createHomeSets({ get, set }: Pick<HomeStore, 'get' | 'set'>): HomeSets {
  const recordings = new Map<string, RecordingDocument>();
  const change = (index: number, changed: Partial<HomeSet>) =>
    set({ sets: get().sets.map((earlier, at) => (at === index ? { ...earlier, ...changed } : earlier)) });
  const show = (index: number, recording: RecordingDocument, isFromVideo: boolean) => {
    recordings.set(recording.id, recording);
    const complete = recording.derived.repetitions.filter(
      ({ completeness, excluded }) => completeness === 'complete' && excluded === undefined,
    );
    const judgements = complete.map(({ judgement }) => judgement);
    const prescribed = get().sets[index]?.result.prescribed ?? null;
    const summary = summariseSet(judgements, prescribed);
    change(index, { found: judgements.length, judgements, summary, isFromVideo });
  };
  return {
    add: (sets) => set({ sets: [...get().sets, ...sets.map((one) => ({ ...newSet, ...one }))] }),
    change,
    show,
    recording: (index) => recordings.get(get().sets[index]?.recordingId ?? '') ?? null,
    replace(recording, isFromVideo) {
      const index = get().sets.findIndex(({ recordingId }) => recordingId === recording.id);
      if (index >= 0) show(index, recording, isFromVideo);
    },
    forget: () => recordings.clear(),
  };
}

const newSet: Omit<HomeSet, 'result' | 'item' | 'recordingId' | 'keeping'> = {
  found: null,
  judgements: [],
  summary: null,
  isFromVideo: false,
  painDuring: null,
  isDiscarded: false,
  problem: null,
};
