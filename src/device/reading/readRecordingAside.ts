import { Problem } from '#core/problem';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { inTime } from '../inTime';
import { createWorkerBridge } from '../workerBridge';
import type { Reading, ReadingWorker } from './worker/readingWorker';

/** The longest recording takes a few seconds on a slow device, ms; so does each further million characters at most. */
const readsWithinMs = { atLeast: 20_000, perMillion: 1000 };

/**
 * Reads a recording document from untrusted text in a worker, which ends with it: the page goes on meanwhile,
 * and what takes too long is given up.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export async function readRecordingAside(text: string): Promise<RecordingDocument> {
  if (typeof Worker === 'undefined') return parseRecording(text); // Commands and tests have no page to keep free.
  const bridge = createWorkerBridge<ReadingWorker>(
    new Worker(new URL('./worker/readingWorker.ts', import.meta.url), { type: 'module' }),
    () => new Error('The part that reads recordings could not start or has stopped. Reload the page.'),
  );
  const withinMs = readsWithinMs.atLeast + (text.length / 1e6) * readsWithinMs.perMillion;
  try {
    const reading = bridge.ask<Reading>(async (remote) => remote.recording(text));
    const { value, problem } = await inTime(reading, withinMs, tooSlow);
    if (problem === null) return value;
    throw new Problem(problem.kind, problem.message);
  } finally {
    bridge.end();
  }
}

function tooSlow(): Problem {
  return new Problem(
    'recording',
    'This recording document takes longer to read than any does. Save it again where it came from.',
  );
}
