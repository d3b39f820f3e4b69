import type { Repository } from '#device/storage/repository';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** All kept sessions, newest first: read once, and again only after one has changed. Rejects where they can't be read. */
export type SessionList = () => Promise<readonly SessionDocument[]>;

export function createSessionList(
  repository: Promise<Pick<Repository, 'sessions' | 'subscribe'>>,
): SessionList {
  let list: Promise<readonly SessionDocument[]> | null = null;
  const forget = () => {
    list = null;
  };
  const read = async () => {
    const { sessions } = await repository;
    return (await sessions.list()).found;
  };
  void repository.then((kept) =>
    kept.subscribe(({ kind }) => {
      if (kind === 'sessions' || kind === 'patient-deleted') forget();
    }),
  );
  return () => {
    if (list !== null) return list;
    const reading = (list = read());
    reading.catch(forget);
    return reading;
  };
}
