import { Problem } from '#core/problem';
import { parseJson } from '#documents/reading/parseJson';
import { parseSession } from '#documents/session/parseSession';
import type { Parcel } from './parcel';

/** Larger than the document of any session within bounds, and smaller than few recordings, bytes. */
const largestSessionBytes = 5_000_000;

/** What other documents of this program are, and where they belong. */
const otherDocuments: Record<string, string> = {
  'overfoot-session':
    'It is a recording, not a session. Open it from the start, and keep it for a patient there.',
  'overfoot-plan': 'It is a plan, not a session. The patient opens it at home.',
  'overfoot-patient': 'It is a patient’s record, not a session. Those come in with a backup.',
};

/**
 * Whether a file belongs in the list of sessions: what is sealed, and JSON that is not a recording. Videos and
 * recordings are looked at first, and kept for a patient from there.
 */
export async function belongsInList(file: File): Promise<boolean> {
  const name = file.name.toLowerCase();
  if (name.endsWith('.age')) return true;
  const isJson = file.type === 'application/json' || name.endsWith('.json');
  return isJson && file.size <= largestSessionBytes && formatOf(await file.text()) !== 'overfoot-session';
}

/**
 * Reads a session document that comes by itself: like a parcel without recordings, and nobody signed it.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export async function readSessionFile(file: Blob): Promise<Parcel> {
  const text = file.size <= largestSessionBytes ? await file.text() : '';
  const format = formatOf(text);
  if (format === 'overfoot-visit')
    return { session: parseSession(text), sets: [], sentAt: null, sender: null };
  throw new Problem(
    'file',
    otherDocuments[format ?? ''] ??
      'It is not a sent session: those are sealed, and end in “.age”. It is no session document either. Open ' +
        'videos and recordings from the start.',
  );
}

/** The format that a document says it has; null where it says none, or is no JSON. */
function formatOf(text: string): string | null {
  try {
    const { format } = (parseJson(text) ?? {}) as { format?: unknown };
    return typeof format === 'string' ? format : null;
  } catch {
    return null;
  }
}
