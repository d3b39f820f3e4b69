import { Problem } from '#core/problem';
import {
  askAgain,
  parcelBounds,
  parcelVersion,
  readManifest,
  type ParcelFile,
  type ParcelManifest,
} from '#documents/parcel/parcelManifest';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { firstLine } from './firstLine';
import { hashOf, packPart, unpackPart } from './packedPart';

/** What is sent of one set; the video only where the patient agrees. */
export interface ParcelSet {
  recording: RecordingDocument;
  video: Blob | null;
}

export interface Parcel {
  session: SessionDocument;
  sets: ParcelSet[];
}

/**
 * Packs a session into one file: a line of JSON that says what follows and what each part's checksum is, then
 * the parts.
 *
 * @returns  not sealed yet
 */
export async function packParcel({ session, sets }: Parcel): Promise<Blob> {
  const files: ParcelFile[] = [];
  const parts: BlobPart[] = [];
  for (const { recording, video } of sets) {
    const { part, facts } = packPart(recording);
    const recordingId = recording.id;
    files.push({ kind: 'session', sessionId: recordingId, ...facts });
    parts.push(part);
    if (video === null) continue;
    const type = video.type.startsWith('video/mp4') ? 'video/mp4' : 'video/webm';
    files.push({
      kind: 'video',
      sessionId: recordingId,
      type,
      bytes: video.size,
      sha256: await hashOf(video),
    });
    parts.push(video);
  }
  const manifest: ParcelManifest = {
    format: 'overfoot-parcel',
    version: parcelVersion,
    visit: session,
    files,
  };
  return new Blob([`${JSON.stringify(manifest)}\n`, ...parts]);
}

/**
 * Checks and opens what packParcel made, which may be anything: sizes, checksums, and every document.
 *
 * @throws Problem  with a sentence; nothing is returned where any part is wrong
 */
export async function unpackParcel(blob: Blob): Promise<Parcel> {
  const head = await firstLine(blob, parcelBounds.manifestBytes);
  if (head === null) throw new Problem('file', 'It is not a session from Overfoot.');
  const { visit: session, files } = readManifest(head.line, blob.size - head.endBytes);
  const recordings = new Map<string, ParcelSet>();
  const videos = new Map<string, Blob>();
  let from = head.endBytes;
  for (const file of files) {
    const type = file.kind === 'video' ? file.type : '';
    const part = blob.slice(from, from + file.bytes, type);
    from += file.bytes;
    if ((await hashOf(part)) !== file.sha256)
      throw new Problem('file', `A part of it was changed or lost on the way. ${askAgain}`);
    if (file.kind === 'video') videos.set(file.sessionId, part);
    else recordings.set(file.sessionId, { recording: await readPacked(part, file), video: null });
  }
  for (const [recordingId, video] of videos) recordings.get(recordingId)!.video = video;
  return { session, sets: [...recordings.values()] };
}

async function readPacked(
  part: Blob,
  { sessionId: recordingId, unpackedBytes }: Extract<ParcelFile, { kind: 'session' }>,
): Promise<RecordingDocument> {
  const recording = parseRecording(await unpackPart(part, unpackedBytes, askAgain));
  if (recording.id !== recordingId)
    throw new Problem('file', `A recording in it does not match its set. ${askAgain}`);
  return recording;
}
