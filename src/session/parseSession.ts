import { checkSession } from './checkSession';
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
  checkSession(result.data);
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
