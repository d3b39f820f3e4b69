import { keypointCount, keypointNames } from '../keypoints/keypointNames';
import { sessionSchema, sessionVersion, type SessionDocument } from './sessionDocument';
import { SessionProblem } from './sessionProblem';

/**
 * Reads a session document from text that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function parseSession(text: string): SessionDocument {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw new SessionProblem(
      'This is not a session document: it is not JSON. Choose a file that was saved here.',
    );
  }
  checkVersion(data);
  const result = sessionSchema.safeParse(data);
  if (!result.success) {
    const [issue] = result.error.issues;
    const where =
      issue === undefined || issue.path.length === 0 ? 'the document' : `"${issue.path.join('.')}"`;
    throw new SessionProblem(
      `This session document is damaged at ${where} (${issue?.message ?? 'unknown'}). Save it again where it came from.`,
    );
  }
  checkObserved(result.data);
  return result.data;
}

function checkVersion(data: unknown): void {
  const { format, version } = (typeof data === 'object' && data !== null ? data : {}) as Record<
    string,
    unknown
  >;
  if (format !== 'overfoot-session') {
    throw new SessionProblem('This is not a session document. Choose a file that was saved here.');
  }
  if (typeof version === 'number' && version > sessionVersion) {
    throw new SessionProblem(
      `This session document is of version ${version}; this program reads up to ${sessionVersion}. Update the program.`,
    );
  }
}

/** What the schema can't say: arrays that belong together fit, and time runs forward. */
function checkObserved({ observed, derived }: SessionDocument): void {
  const frames = observed.timesMs.length;
  for (const name of ['xPx', 'yPx', 'score'] as const) {
    if (observed[name].length !== frames * keypointCount) {
      throw new SessionProblem(
        `This session document is damaged: "observed.${name}" has ${observed[name].length} values ` +
          `where ${frames} frames need ${frames * keypointCount}. Save it again where it came from.`,
      );
    }
  }
  if (observed.timesMs.some((timeMs, i) => i > 0 && timeMs <= observed.timesMs[i - 1]!)) {
    throw new SessionProblem('This session document is damaged: its frame times do not increase.');
  }
  if (observed.points.some((name, i) => name !== keypointNames[i])) {
    throw new SessionProblem('This session document is damaged: its body points are in another order.');
  }
  const samples = derived.kneeAngleDeg.values.length;
  if (derived.repetitions.some(({ loadedFrom, loadedTo }) => loadedFrom > loadedTo || loadedTo >= samples)) {
    throw new SessionProblem('This session document is damaged: a repetition lies outside the recording.');
  }
}
