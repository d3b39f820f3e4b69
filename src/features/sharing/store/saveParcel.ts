import { Problem } from '#core/problem';
import { checksumOf } from '#device/storage/checksumOf';
import type { KeptWhole, Repository } from '#device/storage/repository';
import { isWorkedOn, withKeptWork } from '#documents/recording/keptWork';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { withTherapistsWord } from '#documents/session/withTherapistsWord';
import type { Parcel, ParcelSet } from './parcel';

/** How a parcel compares with what is kept: absent, identical, or another version of the same session. */
export type Standing = { kind: 'new' | 'known' } | { kind: 'another-version'; stake: Stake };

/** What another version of a kept session would change, and what of the kept one stays. */
export interface Stake {
  /** Kept sets that were reviewed or corrected here, which stays. */
  workedOn: number;
  /** Videos that come to sets without one, and that replace another. */
  videosAdded: number;
  videosReplaced: number;
  /** Sets whose results differ, and sets that are not kept yet. */
  setsChanged: number;
  setsAdded: number;
  /** Whether pain, effort, remark, or what else was said of the session differs. */
  hasOtherAnswers: boolean;
}

type Found = NonNullable<Awaited<ReturnType<Repository['recordings']['find']>>>;

/** @throws Problem  where it would replace what is kept of another session or another patient */
export async function standingOf(
  { session, sets }: Parcel,
  { sessions, recordings, videos }: Repository,
): Promise<Standing> {
  const kept = await sessions.find(session.id);
  if (kept !== null && kept.patient !== session.patient) throw notTheirs(kept.patient);
  const stake: Stake = {
    workedOn: 0,
    videosAdded: 0,
    videosReplaced: 0,
    setsChanged: 0,
    setsAdded: 0,
    hasOtherAnswers: kept !== null && !isSame(kept, withTherapistsWord(session, kept)),
  };
  const assertTheirs = async ({ visitId }: Found['facts']) => {
    if (visitId === session.id) return;
    throw notTheirs((visitId === null ? null : await sessions.find(visitId))?.patient ?? '');
  };
  // Sets that come without their recording, which may be kept here.
  for (const { sessionId: recordingId } of session.sets) {
    if (recordingId === null || sets.some(({ recording }) => recording.id === recordingId)) continue;
    const found = await recordings.findHead(recordingId);
    if (found !== null) await assertTheirs(found.facts);
  }
  for (const { recording, video } of sets) {
    const found = await recordings.find(recording.id);
    if (found === null) {
      stake.setsAdded++;
      continue;
    }
    await assertTheirs(found.facts);
    if (isWorkedOn(found.recording)) stake.workedOn++;
    if (!isSame(found.recording, withKeptWork(recording, found.recording))) stake.setsChanged++;
    const name = found.facts.video;
    const keptVideo = name === null ? null : await videos.read(name);
    // Another part of the video, or all of it, may be sent later.
    if (video !== null && keptVideo === null) stake.videosAdded++;
    if (video !== null && keptVideo !== null && keptVideo.size !== video.size) stake.videosReplaced++;
  }
  if (kept === null) return { kind: 'new' };
  const { workedOn, ...changes } = stake;
  return Object.values(changes).some((change) => change !== 0 && change !== false)
    ? { kind: 'another-version', stake }
    : { kind: 'known' };
}

function isSame(one: SessionDocument | RecordingDocument, other: typeof one): boolean {
  return checksumOf(one) === checksumOf(other);
}

function notTheirs(patient: string): Problem {
  const whose = patient === '' ? 'another session' : `a session of ${patient}`;
  return new Problem(
    'file',
    `Part of it has the same id as ${whose} kept here. Nothing was changed; ask the sender about it.`,
  );
}

/**
 * Saves a checked parcel, whole or not at all. Where an earlier version of the session is kept, what was
 * reviewed, corrected and settled in it stays, and so do videos and recordings that the new one comes without.
 *
 * @throws StorageProblem  'changed' where a recording is reviewed in another tab at that moment
 */
export async function saveParcel({ session, sets }: Parcel, repository: Repository): Promise<void> {
  const recordings: KeptWhole[] = [];
  for (const one of sets)
    recordings.push(keptWhole(session, one, await repository.recordings.find(one.recording.id)));
  const kept = await repository.sessions.find(session.id);
  await repository.keepTogether(withTherapistsWord(session, kept), recordings);
}

function keptWhole({ id }: SessionDocument, { recording, video }: ParcelSet, kept: Found | null): KeptWhole {
  const hasVideo = video !== null || (kept?.facts.video ?? null) !== null;
  return {
    recording: kept === null ? recording : withKeptWork(recording, kept.recording),
    visitId: id,
    fromVideo: hasVideo ? 'done' : 'impossible',
    video: video ?? 'stays',
    expects: kept?.edition ?? null,
  };
}
