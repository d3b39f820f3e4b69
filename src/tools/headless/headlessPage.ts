import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import type { MissingReason } from '#core/measurement/curve';
import type { MeasurementNote, Setup } from '#core/measurement/measurement';
import type { Limits } from '#core/protocol/limits';
import type { Verdict } from '#core/scoring/verdict';
import type { VideoFacts } from '#device/frames/frameSource';
import type { DeviceCheck } from '#device/live/checkDevice';
import type { TrackingProgress } from '#device/tracking/trackVideo';
import type { RecordingDocument } from '#documents/recording/recordingDocument';

/**
 * What numbers rest on: the usual look alone; the closer one as well, at the frames that matter, afterwards; or along
 * the way, as devices with a graphics processor take it.
 */
export const lookNames = ['closer', 'along', 'usual'] as const;
export type LookName = (typeof lookNames)[number];

/** What a command asks of the page about the file in its file input. */
export interface MeasureRequest {
  setup: Setup;
  limits: Limits;
  model: PoseModel;
  look: LookName;
  /** Goes into the recording document: for demo data, that it is invented; otherwise empty. */
  note: string;
}

/** How the frames were read and how long that took. */
export interface PipelineFacts {
  readBy: VideoFacts['readBy'];
  framesExpected: number;
  frames: number;
  framesWithPerson: number;
  /** From opening the file to the last measured number, with the model loaded before. */
  framesPerSecond: number;
  /** Tensors that the pose worker holds afterwards: must not grow from one recording to the next. */
  tensors: number;
  device: PoseDevice;
}

/** A closer look as plain numbers, which can leave the page. */
export interface PlainLook {
  frame: number;
  mirrored: number[] | null;
  second: number[];
  secondMirrored: number[];
}

export interface MeasuredRecording {
  /** From the usual look alone. */
  recording: RecordingDocument;
  /** Null where none was asked for. */
  closer: { looks: PlainLook[]; seconds: number } | null;
  notes: MeasurementNote[];
  /** A sentence where the file ended before its time, else null. */
  shortfall: string | null;
  pipeline: PipelineFacts;
}

export interface BenchRequest {
  model: PoseModel;
  /** Frames from the start of the file. */
  maxFrames: number;
  /** How often pipeline and bare loop are timed, in turn. */
  rounds: number;
}

/** Frames a second of each round, in order. */
export interface RecordedTimes {
  frames: number;
  widthPx: number;
  heightPx: number;
  pipelineFps: number[];
  bareFps: number[];
  device: PoseDevice;
}

export interface CloserRequest {
  model: PoseModel;
  rounds: number;
}

/** Each round's times from opening the file, in order, ms. */
export interface CloserTimes {
  frames: number;
  /** Frames that were looked at again. */
  looked: number;
  /** To the numbers of a pass by itself. */
  plainMs: number[];
  /** To the first numbers where a closer look follows. */
  firstMs: number[];
  /** To the numbers after the closer look. */
  wholeMs: number[];
  device: PoseDevice;
}

/** What a command asks of the page about its camera. */
export interface LiveRequest {
  setup: Setup;
  limits: Limits;
  /** Null leaves it to the device check. */
  model: PoseModel | null;
  /** How long the live loop runs, ms ... */
  forMs: number;
  /** ... and longer, up to three times that, until so many repetitions have their verdict. */
  awaitVerdicts: number;
  /** Pictures over which the network alone is timed before and again after, the camera running; 0 leaves that out. */
  bareFrames: number;
}

/** Marks that the page sets where the live loop begins and ends, to be found in a trace. */
export const liveMarks = { from: 'live loop begins', to: 'live loop ends' };

/** The result of counting along with the camera; times are ms from the first picture. */
export interface LiveRun {
  /** The camera's own name. */
  camera: string;
  device: PoseDevice;
  /** Null where the model was given. */
  check: DeviceCheck | null;
  /** Size of the camera's picture, px. */
  widthPx: number;
  heightPx: number;
  /** Pictures in which joints were looked for. */
  frames: number;
  /** Pictures a second of the live loop, of the camera, and of the network alone (null where not timed). */
  liveFps: number;
  cameraFps: number;
  bareFps: number | null;
  /** Each count with the time at which the page received it. */
  counts: { count: number; atMs: number }[];
  verdicts: Verdict[];
  /** Why repetitions were not measured, where they were not. */
  unmeasured: MissingReason[];
  /** Complete repetitions that the review finds in the same frames, and when each was over. */
  reviewedCount: number;
  reviewedEndsMs: number[];
}

/** A value, or a sentence that says what is wrong with the input and what to do. */
export type Outcome<Value> = { value: Value; problem: null } | { value: null; problem: string };

/** What the headless page offers to the commands that drive it. */
export interface HeadlessPage {
  measureChosenFile(request: MeasureRequest): Promise<Outcome<MeasuredRecording>>;
  timeRecorded(request: BenchRequest): Promise<Outcome<RecordedTimes>>;
  timeCloser(request: CloserRequest): Promise<Outcome<CloserTimes>>;
  /** Counts along with the camera. */
  runLive(request: LiveRequest): Promise<Outcome<LiveRun>>;
  /** Passes the chosen file's pictures to takeJpeg, at a given rate per second. */
  giveJpegs(rateHz: number): Promise<Outcome<null>>;
}

export type Progress = TrackingProgress;

declare global {
  interface Window {
    headlessPage: HeadlessPage;
    /** Set by the command that wants progress reports. */
    reportProgress?: (progress: Progress) => void;
    /** Set by the caller that asks for pictures: takes one in base 64, and how often it occurs in a row. */
    takeJpeg?: (base64: string, times: number) => Promise<void>;
  }
}
