import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import {
  askAgain,
  parcelBounds,
  parcelVersion,
  readManifest,
  type ParcelFile,
  type ParcelManifest,
} from '../../handover/parcelManifest';
import { ParcelProblem } from '../../handover/parcelProblem';
import { parseSession } from '../../session/parseSession';
import type { SessionDocument } from '../../session/sessionDocument';
import type { VisitDocument } from '../../session/visitDocument';

/** What is sent of one set; the video only where the patient agrees. */
export interface ParcelSet {
  session: SessionDocument;
  video: Blob | null;
}

export interface Parcel {
  visit: VisitDocument;
  sets: ParcelSet[];
}

const newline = 10;
/** So much of a session is unpacked at a time, so that a bomb is noticed after one piece. */
const pieceBytes = 16_384;

/**
 * Puts a visit into one file: a line of JSON that says what follows and what each part's checksum is, then the parts.
 *
 * @returns  not sealed yet
 */
export async function packParcel({ visit, sets }: Parcel): Promise<Blob> {
  const files: ParcelFile[] = [];
  const parts: BlobPart[] = [];
  for (const { session, video } of sets) {
    const text = strToU8(JSON.stringify(session));
    const packed = deflateSync(text) as Uint8Array<ArrayBuffer>;
    const sessionId = session.id;
    files.push({
      kind: 'session',
      sessionId,
      bytes: packed.length,
      unpackedBytes: text.length,
      sha256: bytesToHex(sha256(packed)),
    });
    parts.push(packed);
    if (video === null) continue;
    const type = video.type.startsWith('video/mp4') ? 'video/mp4' : 'video/webm';
    files.push({ kind: 'video', sessionId, type, bytes: video.size, sha256: await hashOf(video) });
    parts.push(video);
  }
  const manifest: ParcelManifest = { format: 'overfoot-parcel', version: parcelVersion, visit, files };
  return new Blob([`${JSON.stringify(manifest)}\n`, ...parts]);
}

/**
 * Checks and opens what packParcel made, which may be anything: sizes, checksums, and every document.
 *
 * @throws ParcelProblem, SessionProblem  with a sentence; nothing of it is given where a part is not right
 */
export async function unpackParcel(blob: Blob): Promise<Parcel> {
  const head = new Uint8Array(await blob.slice(0, parcelBounds.manifestBytes).arrayBuffer());
  const end = head.indexOf(newline);
  if (end < 0) throw new ParcelProblem('It is no session from Overfoot.');
  const { visit, files } = readManifest(strFromU8(head.subarray(0, end)), blob.size - end - 1);
  const sessions = new Map<string, ParcelSet>();
  const videos = new Map<string, Blob>();
  let from = end + 1;
  for (const file of files) {
    const type = file.kind === 'video' ? file.type : '';
    const part = blob.slice(from, from + file.bytes, type);
    from += file.bytes;
    if ((await hashOf(part)) !== file.sha256)
      throw new ParcelProblem(`A part of it was changed or lost on the way. ${askAgain}`);
    if (file.kind === 'video') videos.set(file.sessionId, part);
    else sessions.set(file.sessionId, { session: await readPacked(part, file), video: null });
  }
  for (const [sessionId, video] of videos) sessions.get(sessionId)!.video = video;
  return { visit, sets: [...sessions.values()] };
}

async function readPacked(
  part: Blob,
  { sessionId, unpackedBytes }: Extract<ParcelFile, { kind: 'session' }>,
): Promise<SessionDocument> {
  const session = parseSession(inflate(new Uint8Array(await part.arrayBuffer()), unpackedBytes));
  if (session.id !== sessionId)
    throw new ParcelProblem(`A recording in it is not the one of its set. ${askAgain}`);
  return session;
}

/** @throws ParcelProblem  where it is not exactly as long as it says */
function inflate(packed: Uint8Array, unpackedBytes: number): string {
  const wrong = new ParcelProblem(`A recording in it can’t be unpacked. ${askAgain}`);
  const unpacked = new Uint8Array(unpackedBytes);
  let length = 0;
  const stream = new Inflate((piece) => {
    if (length + piece.length > unpackedBytes) throw wrong;
    unpacked.set(piece, length);
    length += piece.length;
  });
  try {
    for (let from = 0; from < packed.length; from += pieceBytes)
      stream.push(packed.subarray(from, from + pieceBytes), from + pieceBytes >= packed.length);
  } catch {
    throw wrong;
  }
  if (length !== unpackedBytes) throw wrong;
  return strFromU8(unpacked);
}

/** SHA-256 of a blob, read piece by piece. */
async function hashOf(blob: Blob): Promise<string> {
  const hash = sha256.create();
  const reader = blob.stream().getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) hash.update(next.value);
  return bytesToHex(hash.digest());
}
