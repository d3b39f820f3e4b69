import { sessionHead, type SessionHead } from '#documents/recording/sessionHead';
import type { SessionFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { reviewOnto } from './reviewOnto';

/**
 * Keeps a reviewed session. One that was measured from its video meanwhile keeps the newer joints, measured with what the
 * review says.
 *
 * @param fromVideo  how far that was when the session was opened
 */
export async function saveReviewed(
  { sessions }: Pick<Repository, 'sessions'>,
  session: SessionHead,
  fromVideo: SessionFacts['fromVideo'],
): Promise<void> {
  const now = fromVideo === 'waiting' ? await sessions.find(session.id) : null;
  const isNewer = now !== null && now.facts.fromVideo !== fromVideo;
  await sessions.update(isNewer ? sessionHead(reviewOnto(now.session, session)) : session);
}
