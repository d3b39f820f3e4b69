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

/** Files that were opened together, by what becomes of them; each in the order in which they came. */
export interface SortedFiles {
  /** What is sealed, and JSON that is no recording. */
  sessions: File[];
  /** Recordings, which may belong to the sessions. */
  recordings: File[];
  /** Videos, which are looked at first and kept for a patient from there. */
  videos: File[];
}

/** Sorts files without reading more of them than what they are. */
export async function sortFiles(files: readonly File[]): Promise<SortedFiles> {
  const kinds = await Promise.all(files.map(kindOf));
  const ofKind = (kind: keyof SortedFiles) => files.filter((_, at) => kinds[at] === kind);
  return { sessions: ofKind('sessions'), recordings: ofKind('recordings'), videos: ofKind('videos') };
}

async function kindOf(file: File): Promise<keyof SortedFiles> {
  const name = file.name.toLowerCase();
  if (name.endsWith('.age')) return 'sessions';
  if (file.type !== 'application/json' && !name.endsWith('.json')) return 'videos';
  const isRecording = file.size > largestSessionBytes || formatOf(await file.text()) === 'overfoot-session';
  return isRecording ? 'recordings' : 'sessions';
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
