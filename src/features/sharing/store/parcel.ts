import { Problem } from '#core/problem';
import { readRecordingAside } from '#device/reading/readRecordingAside';
import {
  askAgain,
  assertWhole,
  parcelBounds,
  parcelVersion,
  readManifest,
  type ParcelFile,
  type ParcelManifest,
} from '#documents/parcel/parcelManifest';
import { readSender, type ParcelSender } from '#documents/parcel/parcelSender';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { isSignedBy } from '#shell/signing';
import { firstLine, type FirstLine } from './firstLine';
import { hashOf, packPart, unpackPart } from './packedPart';

/** What is sent of one set; the video only where the patient agrees. */
export interface ParcelSet {
  recording: RecordingDocument;
  video: Blob | null;
}

export interface Parcel {
  session: SessionDocument;
  sets: ParcelSet[];
  /** When it was packed, ISO 8601; null in parcels of version 1. */
  sentAt: string | null;
  /** Who signed it; null where nobody did. */
  sender: { key: string } | null;
}

/** What is packed. */
export type PackedParcel = Pick<Parcel, 'session' | 'sets'> & { sentAt: string };

/** What signs a parcel; null where the device can't. */
export type ParcelSigner = ((line: Uint8Array<ArrayBuffer>) => Promise<ParcelSender>) | null;

/**
 * Packs a session into one file: a line of JSON that says what follows and what each part's checksum is, a line
 * that signs the first one, then the parts.
 *
 * @returns  not sealed yet
 */
export async function packParcel(
  { session, sets, sentAt }: PackedParcel,
  signer: ParcelSigner,
): Promise<Blob> {
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
    sentAt,
    visit: session,
    files,
  };
  const line = new TextEncoder().encode(JSON.stringify(manifest));
  const sender = signer === null ? null : await signer(line);
  return new Blob([line, `\n${JSON.stringify(sender)}\n`, ...parts]);
}

/**
 * Checks and opens what packParcel made, which may be anything: sizes, checksums, and every document.
 *
 * @throws Problem  with a sentence; nothing is returned where any part is wrong
 */
export async function unpackParcel(blob: Blob): Promise<Parcel> {
  const head = await firstLine(blob, parcelBounds.manifestBytes);
  if (head === null) throw new Problem('file', 'It is not a session from Overfoot.');
  const manifest = readManifest(head.line);
  const { visit: session, sentAt, files } = manifest;
  // Version 1 knew neither a time of sending nor a signature.
  const { sender, endBytes } =
    sentAt === null ? { sender: null, endBytes: head.endBytes } : await readSigned(blob, head);
  assertWhole(manifest, blob.size - endBytes);
  const recordings = new Map<string, ParcelSet>();
  const videos = new Map<string, Blob>();
  let from = endBytes;
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
  return { session, sets: [...recordings.values()], sentAt, sender };
}

/**
 * Reads and checks the signature of the first line.
 *
 * @param whatNext  what to do where it is not whole
 * @throws Problem  where it is not that of this line
 */
export async function readSigned(
  blob: Blob,
  head: FirstLine,
  whatNext = askAgain,
): Promise<{ sender: ParcelSender | null; endBytes: number }> {
  const next = await firstLine(blob.slice(head.endBytes), parcelBounds.senderBytes);
  if (next === null) throw new Problem('file', `It is not whole. ${whatNext}`);
  const sender = readSender(next.line, whatNext);
  const line = new Uint8Array(await blob.slice(0, head.endBytes - 1).arrayBuffer());
  if (sender !== null && !(await isSignedBy(sender.key, sender.signature, line)))
    throw new Problem('file', `It was changed after it was signed. ${whatNext}`);
  return { sender, endBytes: head.endBytes + next.endBytes };
}

async function readPacked(
  part: Blob,
  { sessionId: recordingId, unpackedBytes }: Extract<ParcelFile, { kind: 'session' }>,
): Promise<RecordingDocument> {
  const recording = await readRecordingAside(await unpackPart(part, unpackedBytes, askAgain));
  if (recording.id !== recordingId)
    throw new Problem('file', `A recording in it does not match its set. ${askAgain}`);
  return recording;
}
