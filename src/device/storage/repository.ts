import type { TimedRow } from '#core/keypoints/keypointTrack';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { SessionDocument } from '#documents/session/sessionDocument';
import type { Digests } from './createDigests';
import type { KeptLibrary } from './keptLibrary';
import type { FromVideo, PlanRecord, RecordingFacts, SetStart, TrackingModel } from './keptSchemas';
import type { DeviceLock } from './lock/createDeviceLock';
import type { Edition } from './records';
import type { ReplicaRows } from './replicaRows';
import type { StorageProblem } from './storageProblem';
import type { Videos, VideoWriter } from './videos';
import type { KeptChange } from './watchChanges';

/** Documents of a kind; what can't be read is reported next to them and stays where it is. */
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
  /** Stores when the set was started, ms from the start of the video, so that an interrupted set has it too. */
  go(goMs: number): Promise<void>;
  /** Resolves once all rows so far are kept: for a page that is about to be hidden. */
  flush(): Promise<void>;
  /** Ends the video and returns it for reading; null where none is kept or nothing arrived. */
  endVideo(): Promise<File | null>;
  /** Keeps the finished set as a recording, with its session, in place of what was kept during it. */
  finish(recording: RecordingDocument, fromVideo: FromVideo, session: SessionDocument | null): Promise<void>;
  /** Deletes everything of it. */
  drop(): Promise<void>;
}

/** A set whose recording was interrupted: the tab was closed, or the device switched off. */
export interface InterruptedSet {
  start: SetStart;
  /** How much of it exists. */
  frames: number;
  lastRowMs: number | null;
  videoBytes: number;
}

/** A recording that is kept together with its session, and what is kept next to it. */
export interface KeptWhole {
  recording: RecordingDocument;
  /** The session that it belongs to; null where it belongs to none. */
  visitId: string | null;
  fromVideo: FromVideo;
  /** To be copied; null where it has none, 'stays' where it keeps the one that it has here. */
  video: Blob | null | 'stays';
  /** The edition that it replaces, null for none; left out where it replaces whatever is there. */
  expects?: Edition | null;
}

/** Rows of a video that is tracked in stages, over as many visits to the page as it takes. */
export interface TrackingRows {
  /** What was tracked before. */
  readonly earlier: readonly TimedRow[];
  addRow(timed: TimedRow): void;
  flush(): Promise<void>;
  /** Stops keeping rows; those kept stay for the next time. */
  stop(): void;
}

/**
 * Everything that is kept: patients, sessions, recordings with their videos, plans, and sets whose recording was
 * interrupted.
 *
 * Each call rejects with a StorageProblem where the device can't do it, and with a problem of the document's
 * reader where a document is not valid; both have a sentence. What is read is checked.
 */
export interface Repository {
  /**
   * Hears of every change to what is kept, made here or in another tab.
   *
   * @returns the way to stop
   */
  subscribe(listener: (change: KeptChange) => void): () => void;
  /** To be called once everything of a patient was deleted: what is still in memory of them is to go as well. */
  reportDeleted(patient: string): void;
  /** What persists beyond the tab; the person must be informed of what does not. */
  readonly lasting: { records: boolean; videos: boolean };
  /** The passphrase lock; null where nothing persists. */
  readonly lock: DeviceLock | null;
  readonly sessions: {
    /** Newest first. */
    list(): Promise<Listed<SessionDocument>>;
    /** Without reading them: for who only asks whether there are any. */
    ids(): Promise<readonly string[]>;
    find(id: string): Promise<SessionDocument | null>;
    save(session: SessionDocument): Promise<void>;
    /** Deletes the session with its recordings and their videos. */
    remove(id: string): Promise<void>;
  };
  readonly recordings: {
    /** Newest first. */
    list(): Promise<Listed<RecordingFacts>>;
    find(
      id: string,
    ): Promise<{ recording: RecordingDocument; facts: RecordingFacts; edition: Edition } | null>;
    /** What is kept next to these recordings; those that are gone or can't be read are left out. */
    facts(ids: readonly string[]): Promise<RecordingFacts[]>;
    /** The same without the joints of each frame, much faster. */
    findHead(
      id: string,
    ): Promise<{ recording: RecordingHead; facts: RecordingFacts; edition: Edition } | null>;
    /** @param beside  what is kept next to the document and can't be derived from it */
    save(
      recording: RecordingDocument,
      beside: Pick<RecordingFacts, 'visitId' | 'video' | 'fromVideo'>,
    ): Promise<void>;
    /**
     * Replaces the recording with the same id by its reviewed version; its joints and what is kept next to it
     * stay.
     *
     * @param expects  the edition that was reviewed
     * @returns  the new edition
     * @throws StorageProblem  'changed' where another one is kept by now: nothing is overwritten
     */
    update(recording: RecordingHead, expects: Edition): Promise<Edition>;
    /**
     * Replaces the recording with the same id by the one tracked from its video.
     *
     * @throws StorageProblem  'changed' where another edition than expected is kept by now
     */
    replaceFromVideo(recording: RecordingDocument, expects: Edition): Promise<void>;
    /** Cancels tracking from the video, or requests it again; rows tracked so far are deleted. */
    setFromVideo(id: string, state: Exclude<FromVideo, 'done'>): Promise<void>;
    /** Deletes the recording with its video. */
    remove(id: string): Promise<void>;
  };
  readonly patients: {
    list(): Promise<Listed<PatientDocument>>;
    find(id: string): Promise<PatientDocument | null>;
    /** The one with this pseudonym; reads all records the first time only. Null where there is none. */
    named(pseudonym: string): Promise<PatientDocument | null>;
    /** @throws StorageProblem  'changed' where a patient of that pseudonym is kept under another id */
    add(patient: PatientDocument): Promise<void>;
    /**
     * Changes what is kept, as it is by then; what another tab changes meanwhile stays.
     *
     * @returns  what is kept now; null where there is no such patient
     */
    update(
      id: string,
      change: (patient: PatientDocument) => PatientDocument,
    ): Promise<PatientDocument | null>;
    /** Deletes the record and what was worked out for it; sessions and plans stay. */
    remove(id: string): Promise<void>;
  };
  readonly digests: Digests;
  /** What sharing within the practice knows of what is kept. */
  readonly replica: ReplicaRows;
  readonly plans: {
    /** Last saved first. */
    list(): Promise<Listed<PlanRecord>>;
    /** The document's text, for the plan's own reader; null where there is none. */
    find(id: string): Promise<string | null>;
    /**
     * @param text  JSON; treated as opaque
     * @param savedAt  ISO 8601; now, where left out
     */
    save(id: string, text: string, savedAt?: string): Promise<void>;
    remove(id: string): Promise<void>;
  };
  /** The practice's library; it is kept as a small text, and so is in backups. */
  readonly library: KeptLibrary;
  /** Small texts by name: keys, drafts. */
  readonly notes: {
    /** One that can't be read is there, and empty. */
    read(): Promise<Map<string, string>>;
    write(name: string, text: string): Promise<void>;
    /** Removing what is not there is no error. */
    remove(name: string): Promise<void>;
  };
  readonly videos: Pick<Videos, 'read' | 'list'>;
  /**
   * Keeps a session and recordings from elsewhere in one go: either all of it is kept, or all stays as it was.
   * Videos are written beside those that are there, which are deleted afterwards.
   *
   * @throws StorageProblem  'changed' where another edition of a recording is kept than expected, 'full', ...
   */
  keepTogether(session: SessionDocument | null, recordings: readonly KeptWhole[]): Promise<void>;
  /**
   * Begins a set: from here on nothing but its last moment can be lost.
   *
   * @param onProblem  called where rows can't be kept during it
   */
  beginSet(start: SetStart, onProblem: (problem: StorageProblem) => void): Promise<OpenSet>;
  /** Sets that were interrupted, oldest first; not those that this or another tab is recording now. */
  interrupted(): Promise<Listed<InterruptedSet>>;
  /** What was tracked during an interrupted set, and its video as far as it reached storage. */
  readInterrupted(id: string): Promise<{ start: SetStart; rows: TimedRow[]; video: File | null }>;
  /** Keeps an interrupted set as a recording, with its session, in place of what was kept during it. */
  keepInterrupted(
    recording: RecordingDocument,
    fromVideo: FromVideo,
    session: SessionDocument | null,
  ): Promise<void>;
  /** Deletes everything of an interrupted set. */
  dropInterrupted(id: string): Promise<void>;
  /** Continues tracking a recording's video, from where the same model got to last time. */
  trackingRows(
    id: string,
    model: TrackingModel,
    onProblem: (problem: StorageProblem) => void,
  ): Promise<TrackingRows>;
  /** Waits until no other tab does this work; returns a function to call when it is done. */
  takeTurn(work: string, signal?: AbortSignal): Promise<() => void>;
  /** What is used and what is still free, bytes; null where the browser does not report it. */
  space(): Promise<{ usedBytes: number; freeBytes: number } | null>;
  /**
   * Deletes the videos of recordings from before a moment; what was measured stays. Recordings still waiting
   * to be measured from their video keep it.
   *
   * @param before  ISO 8601, UTC
   * @returns  bytes freed
   */
  freeVideos(before: string): Promise<number>;
  /** Bytes that would be freed. */
  freeableBytes(before: string): Promise<number>;
  /**
   * Deletes everything that is kept: sessions, recordings, videos, plans, interrupted sets, notes, and the
   * lock.
   *
   * @throws StorageProblem  'other-tab' while a set is recorded anywhere
   */
  eraseAll(): Promise<void>;
  /** Asks the browser never to clear what is kept by itself; returns whether it agreed. */
  askToPersist(): Promise<boolean>;
  close(): void;
}
