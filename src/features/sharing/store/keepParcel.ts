import { ParcelProblem } from '#documents/parcel/parcelProblem';
import type { Repository } from '#device/storage/repository';
import { keepSession } from './keepSession';
import type { Parcel } from './parcel';

/** How a parcel stands to what is kept: nothing of it, exactly it, or another version of the same visit. */
export type Standing = 'new' | 'known' | 'another-version';

/** @throws ParcelProblem  where it would take the place of what is kept of another visit or another patient */
export async function standingOf(
  { visit, sets }: Parcel,
  { visits, sessions, videos }: Repository,
): Promise<Standing> {
  const kept = await visits.find(visit.id);
  if (kept !== null && kept.patient !== visit.patient) throw notTheirs(kept.patient);
  let isKnown = kept !== null && JSON.stringify(kept) === JSON.stringify(visit);
  for (const { session, video } of sets) {
    const found = await sessions.find(session.id);
    if (found !== null && found.facts.visitId !== visit.id) {
      const other = found.facts.visitId === null ? null : await visits.find(found.facts.visitId);
      throw notTheirs(other?.patient ?? '');
    }
    isKnown &&= found !== null && JSON.stringify(found.session) === JSON.stringify(session);
    const name = found?.facts.video ?? null;
    const keptVideo = name === null ? null : await videos.read(name);
    // Another part of the video, or all of it, may be sent later.
    isKnown &&= video === null || keptVideo?.size === video.size;
  }
  return isKnown ? 'known' : kept === null ? 'new' : 'another-version';
}

function notTheirs(patient: string): ParcelProblem {
  const whose = patient === '' ? 'another session' : `a session of ${patient}`;
  return new ParcelProblem(
    `A part of it has the number of ${whose} that is kept here. Nothing was changed; ask who sent it.`,
  );
}

/** Keeps a checked parcel, in the place of an earlier version of the same visit. */
export async function keepParcel({ visit, sets }: Parcel, repository: Repository): Promise<void> {
  await repository.visits.remove(visit.id);
  for (const { session, video } of sets)
    await keepSession(repository, session, {
      ...{ video, visitId: visit.id, visit },
      fromVideo: video === null ? 'impossible' : 'done',
    });
  await repository.visits.save(visit);
}
