import type { TrackingProgress } from '../analysis/trackVideo';
import type { VideoFacts } from '../frames/frameSource';
import type { PoseDevice, PoseModel } from '../keypoints/poseModel';
import type { MeasurementNote, Setup } from '../measurement/measurement';
import type { Limits } from '../protocol/limits';
import type { SessionDocument } from '../session/sessionDocument';

/** What a command asks of the page about the file in its file input. */
export interface MeasureRequest {
  setup: Setup;
  limits: Limits;
  model: PoseModel;
  /** Goes into the session document: for demo data, that it is invented; otherwise empty. */
  note: string;
}

/** How the frames were read and what that took. */
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

export interface MeasuredRecording {
  session: SessionDocument;
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

/** A value, or a sentence that says what is wrong with the input and what to do. */
export type Outcome<Value> = { value: Value; problem: null } | { value: null; problem: string };

/** What the headless page offers to the commands that drive it. */
export interface HeadlessPage {
  measureChosenFile(request: MeasureRequest): Promise<Outcome<MeasuredRecording>>;
  timeRecorded(request: BenchRequest): Promise<Outcome<RecordedTimes>>;
}

export type Progress = TrackingProgress;

declare global {
  interface Window {
    headlessPage: HeadlessPage;
    /** Put there by the command that wants to hear of progress. */
    reportProgress?: (progress: Progress) => void;
  }
}
