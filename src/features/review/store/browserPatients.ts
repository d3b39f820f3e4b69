import { ensurePatient } from '#device/storage/ensurePatient';
import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import { storageProblem } from '#device/storage/storageProblem';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { notAsked } from '#documents/session/notAsked';
import { sessionVersion, type SessionDocument } from '#documents/session/sessionDocument';
import { unplannedSet } from '#documents/session/unplannedSet';
import type { SignedLog } from '#shell/signedLog';
import { createReviewSaver } from './createReviewSaver';
import { loggedSaver } from './loggedSaver';
import type { ReviewAdapters } from './reviewAdapters';

interface World {
  openRepository: () => Promise<OpenedRepository>;
  log: Pick<SignedLog, 'add'>;
  newId(): string;
  now(): Date;
}

/**
 * Keeps recordings of the clinic in sessions without a plan. What is kept for one patient and day while the page is
 * open is one session, such as the left and the right leg of one visit.
 */
export function browserPatients({ openRepository, log, newId, now }: World): ReviewAdapters['patients'] {
  /** Sessions of this page, by patient and day. */
  const begun = new Map<string, string>();

  const sessionFor = async ({ sessions }: Repository, patient: string, recording: RecordingDocument) => {
    const day = `${patient} ${recording.createdAt.slice(0, 10)}`;
    const known = begun.get(day);
    const session = known === undefined ? null : await sessions.find(known);
    const { createdAt: startedAt } = recording;
    const added = withSet(session ?? clinicSession(newId(), patient, startedAt), recording);
    begun.set(day, added.id);
    return added;
  };

  return {
    async pseudonyms() {
      const { patients } = (await openRepository()).repository;
      return (await patients.list()).found.map(({ pseudonym }) => pseudonym).sort();
    },
    async keep(recording, video, pseudonym) {
      const { repository } = await openRepository();
      await ensurePatient(repository, pseudonym, { newId, now });
      const session = await sessionFor(repository, pseudonym, recording);
      const visitId = session.id;
      const fromVideo = video === null ? 'impossible' : 'done';
      await repository.keepTogether(session, [{ recording, visitId, fromVideo, video }]);
      const kept = await repository.recordings.findHead(recording.id);
      if (kept === null) throw storageProblem('missing');
      return {
        session: null,
        save: loggedSaver(createReviewSaver(repository, kept), kept.recording, (what) =>
          log.add(pseudonym, { what, about: recording.id }),
        ),
        readOther: () => Promise.reject(storageProblem('missing')),
      };
    },
  };
}

function clinicSession(id: string, patient: string, startedAt: string): SessionDocument {
  return {
    format: 'overfoot-visit',
    version: sessionVersion,
    ...notAsked,
    id,
    startedAt,
    endedAt: startedAt,
    patient,
    planId: null,
    painBefore: null,
    painAfter: null,
    effort: null,
    remark: '',
    sets: [],
  };
}

function withSet(session: SessionDocument, { id, setup }: RecordingDocument): SessionDocument {
  const { task, side } = setup;
  const number = 1 + session.sets.filter((set) => set.task === task && set.side === side).length;
  return { ...session, sets: [...session.sets, unplannedSet({ id, task, side }, number)] };
}
