import { sum } from 'd3-array';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { CoverOptions } from '#device/frames/coverVideo';
import type { OpenedRepository } from '#device/storage/openRepository';
import { storageProblem } from '#device/storage/storageProblem';
import { coverFor } from '#documents/parcel/coverFor';
import { isOutOfLine, outOfLineSpans } from '#documents/parcel/outOfLineSpans';
import { isCovered, type CoveredPart, type PictureCover, type VideoPart } from '#documents/parcel/videoPart';
import type { DeviceSigner } from '#shell/deviceSigner';
import { explainProblem } from '#shell/explainProblem';
import { sentOutName } from '#shell/receivedNotes';
import { sealFor } from '#shell/seal';
import { message } from '#words/messages/message';
import { packParcel, type PackedParcel, type ParcelSet } from './parcel';

/** One way to send a session. */
export interface SendingChoice {
  /** What would be sent. */
  bytes: number;
  /** False while it is an estimate: before the part was prepared. */
  isExact: boolean;
  /** Why it is not possible; null where it is. */
  fault: string | null;
}

export interface SendingState {
  /** The session that was looked at last; null where none was. */
  sessionId: string | null;
  /** 'shared' by the device's own way of sharing; 'saved' as a file that is still to be sent. */
  state: 'idle' | 'preparing' | 'sealing' | 'shared' | 'saved' | 'failed';
  /** What is to be sent of the videos; null until the patient has chosen. */
  chosen: VideoPart | null;
  /** When it was shared or saved, ISO 8601; null where it was not. */
  sentAt: string | null;
  /** Null until it was read. */
  choices: Record<VideoPart, SendingChoice> | null;
  /** Repetitions out of line, and how many there were in all. */
  outOfLine: { count: number; of: number };
  /** The videos prepared for the choice, one per set; null where none are, or need to be. */
  ready: readonly Blob[] | null;
  /** Progress of the preparation, 0 to 1; null while nothing is being prepared. */
  progress: number | null;
  /** The public half of the key with which this device signs; null where it can't. */
  senderKey: string | null;
  sentence: string | null;
}

/** What sending needs from the world around it; tests hand in plain objects. */
export interface SendingWorld {
  openRepository: () => Promise<OpenedRepository>;
  /** Why no video can be written here; null where it can. */
  coveringFault(): Promise<string | null>;
  coverVideo(video: File, cover: PictureCover, options: CoverOptions): Promise<File>;
  /** Shares a file the device's own way; false where it has none for files, or it was cancelled. */
  share(file: File): Promise<boolean>;
  saveBlob(fileName: string, blob: Blob): void;
  /** What signs the sessions of a plan, and the public half of its key; null where this device can't sign. */
  signerFor(planId: string): Promise<DeviceSigner | null>;
  now(): Date;
}

/** Sending a session to the therapist. No action rejects: what goes wrong is in the state. */
export interface Sending {
  readonly store: StoreApi<SendingState>;
  /**
   * Works out the size of a session for each choice; anything prepared before is dropped.
   *
   * @param wish  what the therapist would like of the videos: chosen beforehand, where the patient has chosen nothing
   */
  look(sessionId: string, wish?: VideoPart | null): Promise<void>;
  /** Chooses what is sent of the videos; videos are re-encoded where needed, and nothing leaves the device. */
  choose(sessionId: string, part: VideoPart): Promise<void>;
  /** Cancels the preparation, and the choice with it. */
  stopPreparing(): void;
  /**
   * Sends what was chosen; nothing where nothing is, or it is not ready.
   *
   * @param recipients  the public keys that the plan carries; each of them opens it
   */
  send(sessionId: string, recipients: readonly string[]): Promise<void>;
  /** After it was sent: to send it once more. */
  sendAgain(): void;
}

/** Shown in place of pictures that are not sent. */
const words = () => message('send.not-shown');

export function createSending(world: SendingWorld): Sending {
  const idle: SendingState = {
    sessionId: null,
    state: 'idle',
    chosen: null,
    sentAt: null,
    choices: null,
    sentence: null,
    outOfLine: { count: 0, of: 0 },
    ready: null,
    progress: null,
    senderKey: null,
  };
  const store = createStore<SendingState>(() => idle);
  const { getState: get, setState: set } = store;
  let preparing = new AbortController();
  /** Sets as they were prepared, by part. */
  let prepared: Partial<Record<CoveredPart, ParcelSet[]>> = {};

  const read = async (
    sessionId: string,
  ): Promise<PackedParcel & { sets: (ParcelSet & { video: File | null })[] }> => {
    const { sessions, recordings, videos } = (await world.openRepository()).repository;
    const session = await sessions.find(sessionId);
    if (session === null) throw storageProblem('missing');
    const sets = [];
    for (const { sessionId: recordingId } of session.sets) {
      const kept = recordingId === null ? null : await recordings.find(recordingId);
      if (kept === null) continue;
      const name = kept.facts.video;
      sets.push({ recording: kept.recording, video: name === null ? null : await videos.read(name) });
    }
    return { session, sets, sentAt: world.now().toISOString() };
  };
  const readyOf = (part: VideoPart) =>
    isCovered(part) ? (prepared[part]?.flatMap(({ video }) => video ?? []) ?? null) : null;
  const tell = (part: VideoPart, change: Partial<SendingChoice>) => {
    const { choices } = get();
    if (choices !== null) set({ choices: { ...choices, [part]: { ...choices[part], ...change } } });
  };
  const ofPart = async (sessionId: string, part: VideoPart): Promise<PackedParcel> => {
    const parcel = await read(sessionId);
    if (part === 'whole') return parcel;
    return { ...parcel, sets: isCovered(part) ? (prepared[part] ?? []) : withoutVideo(parcel.sets) };
  };
  /** @param onProgress  called with 0 to 1 over all videos */
  const cover = async (
    sets: readonly (ParcelSet & { video: File | null })[],
    part: CoveredPart,
    signal: AbortSignal,
    onProgress: (share: number) => void,
  ): Promise<ParcelSet[]> => {
    const jobs = sets.map(({ recording, video }) => ({
      recording,
      video,
      coverAt: coverFor(part, recording),
    }));
    const lengths = jobs.map(({ recording, video, coverAt }) =>
      video === null || coverAt === null ? 0 : recording.video.durationMs,
    );
    const covered: ParcelSet[] = [];
    for (const [index, { recording, video, coverAt }] of jobs.entries()) {
      signal.throwIfAborted();
      if (video === null || coverAt === null) {
        covered.push({ recording, video: null });
        continue;
      }
      const tellOwn = (share: number) =>
        onProgress((sum(lengths.slice(0, index)) + share * lengths[index]!) / sum(lengths));
      covered.push({
        recording,
        video: await world.coverVideo(video, coverAt, { words: words(), signal, onProgress: tellOwn }),
      });
    }
    return covered;
  };
  const prepare = async (sessionId: string, part: CoveredPart, signal: AbortSignal) => {
    set({ state: 'preparing', progress: 0 });
    try {
      const parcel = await read(sessionId);
      const covered = await cover(parcel.sets, part, signal, (progress) => {
        if (!signal.aborted) set({ progress });
      });
      const { size } = await packParcel({ ...parcel, sets: covered }, null);
      signal.throwIfAborted();
      prepared[part] = covered;
      tell(part, { bytes: size, isExact: true });
      set({ state: 'idle', ready: readyOf(part), progress: null });
    } catch (error) {
      if (signal.aborted) return;
      const { sentence } = explainProblem(error, 'prepare');
      set({ state: 'failed', chosen: null, progress: null, sentence });
    }
  };

  const choose = async (sessionId: string, part: VideoPart) => {
    preparing.abort();
    preparing = new AbortController();
    set({ state: 'idle', chosen: part, ready: readyOf(part), progress: null, sentence: null });
    if (isCovered(part) && prepared[part] === undefined) await prepare(sessionId, part, preparing.signal);
  };
  /** Never more than was wished for. */
  const possible = (wish: VideoPart): VideoPart => (get().choices?.[wish].fault === null ? wish : 'none');

  return {
    store,
    async look(sessionId, wish = null) {
      preparing.abort();
      prepared = {};
      const before = get().sessionId === sessionId ? get().chosen : null;
      const isLost = before !== null && isCovered(before);
      const isAsked = isLost && before !== wish;
      set({
        ...idle,
        sessionId,
        chosen: isLost ? null : before,
        sentence: isAsked ? message('send.changed') : null,
      });
      try {
        const parcel = await read(sessionId);
        const { sets, session } = parcel;
        const { size } = await packParcel({ ...parcel, sets: withoutVideo(sets) }, null);
        const signer = session.planId === null ? null : await world.signerFor(session.planId);
        set({ ...lookAt(sets, size, await world.coveringFault()), senderKey: signer?.key ?? null });
        // Without a recording there is nothing to choose.
        if (sets.length === 0) set({ chosen: 'none' });
        else if (wish !== null && get().chosen === null && !isAsked) await choose(sessionId, possible(wish));
      } catch (error) {
        set({ state: 'failed', sentence: explainProblem(error, 'read').sentence });
      }
    },
    choose,
    stopPreparing() {
      preparing.abort();
      if (get().state === 'preparing') set({ state: 'idle', chosen: null, progress: null });
    },
    sendAgain: () => set({ state: 'idle', sentAt: null }),
    async send(sessionId, recipients) {
      const { chosen, state } = get();
      if (chosen === null || state === 'preparing') return;
      set({ state: 'sealing', sentence: null });
      try {
        const parcel = await ofPart(sessionId, chosen);
        const { planId } = parcel.session;
        const signer = planId === null ? null : await world.signerFor(planId);
        const sealed = await sealFor(recipients, await packParcel(parcel, signer?.sign ?? null));
        const fileName = `overfoot-session-${world.now().toISOString().slice(0, 10)}.age`;
        const isShared = await world.share(
          new File([sealed], fileName, { type: 'application/octet-stream' }),
        );
        if (!isShared) world.saveBlob(fileName, sealed);
        const sentAt = world.now().toISOString();
        set({ state: isShared ? 'shared' : 'saved', sentAt });
        const { notes } = (await world.openRepository()).repository;
        // Where it can't be noted, the session is offered for sending again.
        await notes.write(sentOutName(sessionId), sentAt).catch(() => undefined);
      } catch (error) {
        set({ state: 'failed', sentence: explainProblem(error, 'seal').sentence });
      }
    },
  };
}

const withoutVideo = (sets: readonly ParcelSet[]) =>
  sets.map(({ recording }) => ({ recording, video: null }));

/**
 * What can be chosen, with sizes: a part that is still to be prepared is taken to be as large as its share of the video.
 *
 * @param bareBytes  without any video
 * @param writing  why no video can be written; null where it can
 */
function lookAt(
  sets: readonly ParcelSet[],
  bareBytes: number,
  writing: string | null,
): Pick<SendingState, 'choices' | 'outOfLine'> {
  const wholeBytes = sum(sets, ({ video }) => video?.size ?? 0);
  const shownBytes = sum(sets, ({ recording, video }) => {
    const shownMs = sum(outOfLineSpans(recording.derived.repetitions), ({ fromMs, toMs }) => toMs - fromMs);
    return (video?.size ?? 0) * Math.min(1, shownMs / Math.max(1, recording.video.durationMs));
  });
  const repetitions = sets.flatMap(({ recording, video }) =>
    video === null ? [] : recording.derived.repetitions,
  );
  const count = repetitions.filter(isOutOfLine).length;
  const nothing = wholeBytes === 0 ? message('send.no-video') : null;
  const choice = (videoBytes: number, isExact: boolean, fault: string | null): SendingChoice => ({
    bytes: bareBytes + Math.round(videoBytes),
    isExact,
    fault,
  });
  return {
    outOfLine: { count, of: repetitions.filter(({ excluded }) => excluded === undefined).length },
    choices: {
      none: choice(0, true, null),
      'out-of-line': choice(
        shownBytes,
        false,
        nothing ?? (count === 0 ? message('send.nobody-out') : null) ?? writing,
      ),
      'without-head': choice(wholeBytes, false, nothing ?? writing),
      whole: choice(wholeBytes, true, nothing),
    },
  };
}
