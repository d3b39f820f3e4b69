import { createStore, type StoreApi } from 'zustand/vanilla';
import { limitEnds } from '#core/measures/limitEnd';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { beyond } from '#core/scoring/beyond';
import type { Camera } from '#device/camera/camera';
import { CameraProblem } from '#device/camera/cameraProblem';
import { createCameraLoop } from '#device/live/createCameraLoop';
import { kneeReading, type KneeReading } from '#device/live/kneeReading';
import type { LiveFrame } from '#device/live/liveFrame';
import type { PictureFeed } from '#device/live/pictureFeed';
import type { PoseTracker } from '#device/pose/poseTracker';
import { explainProblem } from '#shell/explainProblem';
import { createMirrorRecorder, type MirrorRecording, type RecorderAdapters } from './mirrorRecorder';

/** What the mirror needs from the world around it; tests hand in plain objects. */
export interface MirrorAdapters extends RecorderAdapters {
  openCamera: () => Promise<Camera>;
  openFeed: (stream: MediaStream) => PictureFeed;
  createTracker: () => PoseTracker;
  /** Sounds when the knee leaves its lane; `unlock` is to be called in a press. */
  tone: { unlock: () => void; play: () => void };
}

export interface MirrorState {
  camera:
    | { state: 'off' }
    | { state: 'opening' }
    | { state: 'on'; widthPx: number; heightPx: number; isMirrored: boolean }
    | { state: 'problem'; sentence: string };
  hasTone: boolean;
  recording: MirrorRecording;
}

/** What one picture shows. */
export interface MirrorSight {
  frame: LiveFrame;
  /** Null where the leg can't be read just now. */
  knee: KneeReading | null;
  isOutside: boolean;
}

/** A mirror for practice in the room: nothing that it sees is stored unless asked. No action throws or rejects. */
export interface Mirror {
  readonly store: StoreApi<MirrorState>;
  open(leg: { side: Side; limits: Limits }): Promise<void>;
  /** Changes which leg is watched, and its limits. */
  watchLeg(leg: { side: Side; limits: Limits }): void;
  stream(): MediaStream | null;
  /** Called for each tracked picture; returns a function to stop. */
  watch(listener: (sight: MirrorSight) => void): () => void;
  setTone(hasTone: boolean): void;
  /** Records from now on, only in memory, until stopped or the camera is released. */
  record(): void;
  stopRecording(): void;
  /** Gives the recording to the person as a file. */
  saveRecording(): void;
  /** Forgets what was recorded. */
  dropRecording(): void;
  /** Releases the camera. The recording stays until it is deleted. */
  close(): void;
}

/**
 * The knee must be back by this much before another tone, degrees: otherwise a knee on the limit would sound
 * continuously.
 */
const againDeg = 2;

export function createMirror(adapters: MirrorAdapters): Mirror {
  const { openCamera, openFeed, createTracker, tone } = adapters;
  const store = createStore<MirrorState>(() => ({
    camera: { state: 'off' },
    hasTone: false,
    recording: { state: 'off' },
  }));
  const { getState: get, setState: set } = store;
  const recorder = createMirrorRecorder(adapters, (recording) => set({ recording }));
  const listeners = new Set<(sight: MirrorSight) => void>();
  let leg: { side: Side; limits: Limits } | null = null;
  let hasRung = false;

  const onFrame = (frame: LiveFrame) => {
    if (leg === null) return;
    const { side, limits } = leg;
    const knee = kneeReading(frame.row, side);
    const excessDeg =
      knee === null
        ? -Infinity
        : Math.max(...limitEnds.map((end) => beyond(end, knee.deg, limits['knee-angle'])));
    const isOutside = excessDeg > 0;
    if (isOutside && !hasRung && get().hasTone) tone.play();
    if (isOutside) hasRung = true;
    else if (excessDeg < -againDeg) hasRung = false;
    listeners.forEach((listener) => listener({ frame, knee, isOutside }));
  };

  const loop = createCameraLoop({
    openFeed,
    createTracker,
    onFrame,
    onLetGo: recorder.stop,
    onFailed(error) {
      loop.freeTracker();
      const sentence =
        error instanceof CameraProblem ? error.message : explainProblem(error, 'follow').sentence;
      set({ camera: { state: 'problem', sentence } });
    },
  });

  return {
    store,
    async open(asked) {
      loop.close();
      leg = asked;
      set({ camera: { state: 'opening' } });
      await loop.open(openCamera, async ({ facts }, isCurrent) => {
        await loop.tracker().load('lite');
        const { widthPx, heightPx, facing } = facts;
        if (isCurrent()) set({ camera: { state: 'on', widthPx, heightPx, isMirrored: facing !== 'back' } });
      });
    },
    watchLeg(next) {
      leg = next;
    },
    stream: loop.stream,
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    setTone(hasTone) {
      if (hasTone) tone.unlock();
      set({ hasTone });
    },
    record() {
      const stream = loop.stream();
      if (stream !== null && get().recording.state !== 'done') recorder.start(stream);
    },
    stopRecording: () => recorder.stop(),
    saveRecording() {
      const { recording } = get();
      if (recording.state === 'done') adapters.saveBlob(recording.file.name, recording.file);
    },
    dropRecording() {
      if (get().recording.state !== 'running') set({ recording: { state: 'off' } });
    },
    close() {
      loop.close();
      set({ camera: { state: 'off' } });
    },
  };
}
