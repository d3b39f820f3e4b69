import { expose } from 'comlink';
import { isProblem, type ProblemKind } from '#core/problem';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';

/** A document, or what is wrong with it; a Problem itself would lose what it is on its way. */
export type Reading =
  | { value: RecordingDocument; problem: null }
  | { value: null; problem: { kind: ProblemKind; message: string } };

const worker = {
  recording(text: string): Reading {
    try {
      return { value: parseRecording(text), problem: null };
    } catch (error) {
      if (!isProblem(error, 'recording')) throw error;
      const { kind, message } = error;
      return { value: null, problem: { kind, message } };
    }
  },
};

export type ReadingWorker = typeof worker;

expose(worker);
