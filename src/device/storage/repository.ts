import type { TimedRow } from '#core/keypoints/keypointTrack';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { SessionDocument } from '#documents/session/sessionDocument';
import type { FromVideo, PlanRecord, RecordingFacts, SetStart, TrackingModel } from './keptSchemas';
import type { DeviceLock } from './lock/createDeviceLock';
import type { StorageProblem } from './storageProblem';
import type { Videos, VideoWriter } from './videos';

/** Documents of a kind; what can't be read is told beside them and stays where it is. */
export interface Listed<Value> {
  found: Value[];
  unreadable: { id: string; sentence: string }[];
}

/** A set that is being recorded. */
export interface OpenSet {
  readonly id: string;
  /** Where the recorder's pieces go; null where no video is kept. */
  readonly video: VideoWriter | null;
  /** One frame's joints, its time in ms from the start of the video; kept within half a second. */
  addRow(timed: TimedRow): void;
  /** Writes down when the set was begun, ms from the start of the video: one that is interrupted knows it too. */
  go(goMs: number): Promise<void>;
  /** Resolves once all rows so far are kept: for a page that is about to be hidden. */
  flush(): Promise<void>;
  /** Ends the video and gives it back to be read; null where none is kept or nothing came. */
  endVideo(): Promise<File | null>;
  /** Keeps the finished set as a session, with its visit, in place of what was kept while it went on. */
  finish(recording: RecordingDocument, fromVideo: FromVideo, session: SessionDocument | null): Promise<void>;
  /** Deletes everything of it. */
  drop(): Promise<void>;
}

/** A set whose recording did not come to its end: the tab was closed, or the device went off. */
export interface InterruptedSet {
  start: SetStart;
  /** How much of it is there. */
  frames: number;
  lastRowMs: number | null;
  videoBytes: number;
}

/** Rows of a video that is tracked in pieces, over as many openings of the page as it takes. */
export interface TrackingRows {
  /** What was tracked before. */
  readonly earlier: readonly TimedRow[];
  addRow(timed: TimedRow): void;
  flush(): Promise<void>;
  /** Ends the keeping; what is kept stays for the next time. */
  stop(): void;
}

/**
 * Everything that is kept: visits, sessions with their videos, plans, and sets whose recording was interrupted.
 *
 * Each call rejects with a StorageProblem where the device can't do it, and with another Problem where a document is
 * not what it ought to be; both have a sentence. What is read is checked.
 */
export interface Repository {
  /** What outlasts the tab; where something does not, the person must be told. */
  readonly lasting: { records: boolean; videos: boolean };
  /** The passphrase lock; null where nothing lasts. */
  readonly lock: DeviceLock | null;
  readonly sessions: {
    /** Newest first. */
    list(): Promise<Listed<SessionDocument>>;
    find(id: string): Promise<SessionDocument | null>;
    save(session: SessionDocument): Promise<void>;
    /** Deletes the visit with its sessions and their videos. */
    remove(id: string): Promise<void>;
  };
  readonly recordings: {
    /** Newest first. */
    list(): Promise<Listed<RecordingFacts>>;
    find(id: string): Promise<{ recording: RecordingDocument; facts: RecordingFacts } | null>;
    /** The same without the joints of each frame, much faster. */
    findHead(id: string): Promise<{ recording: RecordingHead; facts: RecordingFacts } | null>;
    /** @param beside  what is kept beside the document and can't be told from it */
    save(
      recording: RecordingDocument,
      beside: Pick<RecordingFacts, 'visitId' | 'video' | 'fromVideo'>,
    ): Promise<void>;
    /** Puts a session that was reviewed in the place of the one with the same id; its joints and what is kept beside it stay. */
    update(recording: RecordingHead): Promise<void>;
    /** Puts a session that was tracked from its video in the place of the one with the same id. */
    replaceFromVideo(recording: RecordingDocument): Promise<void>;
    /** Calls tracking from the video off, or asks for it again; rows tracked so far go. */
    setFromVideo(id: string, state: Exclude<FromVideo, 'done'>): Promise<void>;
    /** Deletes the session with its video. */
    remove(id: string): Promise<void>;
  };
  readonly plans: {
    /** Last saved first. */
    list(): Promise<Listed<PlanRecord>>;
    /** The document's text, for the plan's own reader; null where there is none. */
    find(id: string): Promise<string | null>;
    /**
     * @param text  JSON; what it means is not looked at
     * @param savedAt  ISO 8601; now, where it is not told
     */
    save(id: string, text: string, savedAt?: string): Promise<void>;
    remove(id: string): Promise<void>;
  };
  /** Small texts by name: keys, drafts. */
  readonly notes: {
    read(): Promise<Map<string, string>>;
    write(name: string, text: string): Promise<void>;
    /** Removing what is not there is no error. */
    remove(name: string): Promise<void>;
  };
  readonly videos: Pick<Videos, 'read' | 'list'>;
  /**
   * Begins a set: from here on nothing but its last moment can be lost.
   *
   * @param onProblem  hears where rows can't be kept while it goes on
   */
  beginSet(start: SetStart, onProblem: (problem: StorageProblem) => void): Promise<OpenSet>;
  /** Sets that were interrupted, oldest first; not those that this or another tab is recording just now. */
  interrupted(): Promise<Listed<InterruptedSet>>;
  /** What was tracked while an interrupted set went on, and its video as far as it reached storage. */
  readInterrupted(id: string): Promise<{ start: SetStart; rows: TimedRow[]; video: File | null }>;
  /** Keeps an interrupted set as a session, with its visit, in place of what was kept while it went on. */
  keepInterrupted(
    recording: RecordingDocument,
    fromVideo: FromVideo,
    session: SessionDocument | null,
  ): Promise<void>;
  /** Deletes everything of an interrupted set. */
  dropInterrupted(id: string): Promise<void>;
  /** Goes on with tracking a session's video, from where the same model came to last time. */
  trackingRows(
    id: string,
    model: TrackingModel,
    onProblem: (problem: StorageProblem) => void,
  ): Promise<TrackingRows>;
  /** Waits until no other tab does this work; returns the way to say that it is done. */
  takeTurn(work: string, signal?: AbortSignal): Promise<() => void>;
  /** What is used and what is still free, bytes; null where the browser does not tell. */
  space(): Promise<{ usedBytes: number; freeBytes: number } | null>;
  /**
   * Deletes the videos of sessions from before a moment; what was measured stays. Those that still wait to be measured from
   * their video keep it.
   *
   * @param before  ISO 8601, UTC
   * @returns  how much room that makes, bytes
   */
  freeVideos(before: string): Promise<number>;
  /** How much room that would make, bytes. */
  freeableBytes(before: string): Promise<number>;
  /**
   * Deletes everything that is kept: visits, sessions, videos, plans, interrupted sets, notes, and the lock.
   *
   * @throws StorageProblem  'other-tab' while a set is recorded anywhere
   */
  eraseAll(): Promise<void>;
  /** Asks the browser never to clear what is kept of its own accord; whether it agreed. */
  askToPersist(): Promise<boolean>;
  close(): void;
}
