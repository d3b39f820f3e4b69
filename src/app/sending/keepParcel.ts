import type { Repository } from '../../storage/repository';
import { keepSession } from './keepSession';
import type { Parcel } from './parcel';

/** How a parcel stands to what is kept: nothing of it, exactly it, or another version of the same visit. */
export type Standing = 'new' | 'known' | 'another-version';

export async function standingOf(
  { visit, sets }: Parcel,
  { visits, sessions }: Repository,
): Promise<Standing> {
  const kept = await visits.find(visit.id);
  if (kept === null) return 'new';
  if (JSON.stringify(kept) !== JSON.stringify(visit)) return 'another-version';
  for (const { session, video } of sets) {
    const found = await sessions.find(session.id);
    if (found === null || JSON.stringify(found.session) !== JSON.stringify(session)) return 'another-version';
    if (video !== null && found.facts.video === null) return 'another-version';
  }
  return 'known';
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
