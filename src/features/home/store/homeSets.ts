import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { summariseSet } from '../guide/summariseSet';
import type { HomeSet, SetNumbers } from './homeState';
import type { HomeStore } from './homeStore';

/** The sets of a session as the state shows them, with their recordings. */
export interface HomeSets {
  add(sets: readonly Pick<HomeSet, 'item' | 'result' | 'recordingId' | 'keeping'>[]): void;
  change(index: number, changed: Partial<HomeSet>): void;
  /** Shows what was found in the recording of a set. */
  show(index: number, recording: RecordingDocument, numbers: SetNumbers): void;
  /** The recording of a set, from this session; null where there is none. */
  recording(index: number): RecordingDocument | null;
  /** Replaces the recording of the same id with the one that was measured again. */
  replace(recording: RecordingDocument): void;
  /** No better numbers come for a recording. */
  giveUp(recordingId: string): void;
  forget(): void;
}

export function createHomeSets({ get, set }: Pick<HomeStore, 'get' | 'set'>): HomeSets {
  const recordings = new Map<string, RecordingDocument>();
  const change = (index: number, changed: Partial<HomeSet>) =>
    set({ sets: get().sets.map((earlier, at) => (at === index ? { ...earlier, ...changed } : earlier)) });
  const show = (index: number, recording: RecordingDocument, numbers: SetNumbers) => {
    recordings.set(recording.id, recording);
    const { limits, derived } = recording;
    const complete = completeRepetitions(derived.repetitions);
    const judgements = complete.map(({ judgement }) => judgement);
    const prescribed = get().sets[index]?.result.prescribed ?? null;
    const summary = summariseSet(complete, limits, prescribed, derived.isSideDoubtful);
    change(index, { found: judgements.length, judgements, summary, numbers });
  };
  const indexOf = (id: string) => get().sets.findIndex(({ recordingId }) => recordingId === id);
  return {
    add: (sets) => set({ sets: [...get().sets, ...sets.map((one) => ({ ...newSet, ...one }))] }),
    change,
    show,
    recording: (index) => recordings.get(get().sets[index]?.recordingId ?? '') ?? null,
    replace(recording) {
      const index = indexOf(recording.id);
      if (index >= 0) show(index, recording, 'careful');
    },
    giveUp(id) {
      const index = indexOf(id);
      if (get().sets[index]?.numbers === 'coming') change(index, { numbers: 'first' });
    },
    forget: () => recordings.clear(),
  };
}

const newSet: Omit<HomeSet, 'result' | 'item' | 'recordingId' | 'keeping'> = {
  found: null,
  judgements: [],
  summary: null,
  numbers: 'none',
  painDuring: null,
  isDiscarded: false,
  problem: null,
};
