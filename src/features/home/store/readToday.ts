import type { CountInLine } from '#core/chance/countInLine';
import { countSet } from '#core/scoring/countSet';
import type { Repository } from '#device/storage/repository';
import type { PlanDocument } from '#documents/plan/planDocument';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { sentName, sentOutName, silenceClosedName } from '#shell/receivedNotes';
import { doneTimes } from '../rules/doneTimes';
import { lastSession, lastTimeOf } from '../rules/lastTime';
import { silentSince } from '../rules/silentSince';
import { nothingYet, type Today } from '../rules/today';
import { unsentSessions } from '../rules/unsentSessions';
import { wasFollowed } from './lookBack';

/**
 * @param plans  those kept here, the latest first
 * @param isGivenUp  whether a recording that waits to be measured again will not be
 */
export async function readToday(
  { sessions, notes, recordings }: Repository,
  plans: readonly PlanDocument[],
  now: Date,
  isGivenUp: (recordingId: string) => boolean = () => false,
): Promise<Today> {
  const [latest] = plans;
  if (latest === undefined) return nothingYet;
  const [{ found }, kept] = await Promise.all([sessions.list(), notes.read()]);
  const last = lastSession(found, latest.id);
  const isSettled = (id: string) => kept.has(sentOutName(id)) || kept.has(sentName(id));
  const isClosed = (since: string) => kept.has(silenceClosedName(since));
  return {
    isFollowed: wasFollowed(latest.id, found),
    last: last === null ? null : lastTimeOf(last, await countsOf(last, recordings, isGivenUp)),
    doneAt: doneTimes(found, latest.id),
    silentSince: silentSince(found, latest.id, isClosed, now.getTime()),
    unsent: unsentSessions(found, plans, isSettled, now.getTime()),
  };
}

/** Repetitions in line of each set that could be measured; none while better numbers are to come. What can't be read is left out. */
async function countsOf(
  { sets }: SessionDocument,
  recordings: Repository['recordings'],
  isGivenUp: (recordingId: string) => boolean,
): Promise<CountInLine[]> {
  const counts: CountInLine[] = [];
  for (const { sessionId: recordingId } of sets) {
    const head = recordingId === null ? null : await recordings.findHead(recordingId).catch(() => null);
    if (head === null) continue;
    if (head.facts.fromVideo === 'waiting' && !isGivenUp(head.recording.id)) return [];
    const { derived, limits } = head.recording;
    const count = countSet(completeRepetitions(derived.repetitions), limits);
    if (count !== null) counts.push(count);
  }
  return counts;
}
