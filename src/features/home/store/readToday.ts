import type { CountInLine } from '#core/chance/countInLine';
import { countSet } from '#core/scoring/countSet';
import type { Repository } from '#device/storage/repository';
import type { PlanDocument } from '#documents/plan/planDocument';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { sentName, sentOutName, silenceClosedName } from '#shell/receivedNotes';
import { doneTimes } from '../rules/doneTimes';
import { lastSession, lastTimeOf } from '../rules/lastTime';
import { brokenToday, leftToday, type LeftToday } from '../rules/leftToday';
import { silentSince } from '../rules/silentSince';
import { itemsNow } from '../rules/stepAtHome';
import { nothingYet, type Today } from '../rules/today';
import { unsentSessions } from '../rules/unsentSessions';
import type { InterruptedView } from './homeState';
import { lookBack, wasFollowed } from './lookBack';

/** What is known besides what is kept. */
export interface Known {
  sessions: readonly SessionDocument[];
  /** Those kept here, the latest first. */
  plans: readonly PlanDocument[];
  /** When the latest was accepted, ISO 8601. */
  acceptedAt: string;
  /** Sets whose recording was interrupted, and is to be kept. */
  interrupted: readonly Pick<InterruptedView, 'sessionId'>[];
  /** Whether a recording that waits to be measured again will not be. */
  isGivenUp: (recordingId: string) => boolean;
  now: Date;
}

export async function readToday(
  { notes, recordings }: Pick<Repository, 'notes' | 'recordings'>,
  known: Known,
): Promise<Today> {
  const { sessions, plans, acceptedAt, interrupted, isGivenUp, now } = known;
  const [latest] = plans;
  if (latest === undefined) return nothingYet;
  const kept = await notes.read();
  const last = lastSession(sessions, latest.id);
  const isSettled = (id: string) => kept.has(sentOutName(id)) || kept.has(sentName(id));
  const isClosed = (since: string) => kept.has(silenceClosedName(since));
  const interruptedIn = (id: string) => interrupted.filter(({ sessionId }) => sessionId === id).length;
  return {
    isFollowed: wasFollowed(latest.id, sessions),
    last: last === null ? null : lastTimeOf(last, await countsOf(last, recordings, isGivenUp)),
    doneAt: doneTimes(sessions, latest.id),
    askedAfter: lookBack(latest, sessions, now).askedAfter,
    silentSince: silentSince(sessions, latest.id, acceptedAt, isClosed, now.getTime()),
    items: itemsNow(latest, sessions),
    left: await readLeft(latest, recordings, known),
    unsent: unsentSessions(sessions, plans, isSettled, interruptedIn, now.getTime()),
  };
}

/** What is left of a plan where its last session of today was broken off. */
export async function readLeft(
  plan: PlanDocument,
  recordings: Repository['recordings'],
  { sessions, interrupted, now }: Pick<Known, 'sessions' | 'interrupted' | 'now'>,
): Promise<LeftToday | null> {
  const counted = new Map<string, number>();
  for (const { sessionId: id } of brokenToday(sessions, plan.id, now).flatMap(({ sets }) => sets)) {
    const head = id === null ? null : await recordings.findHead(id).catch(() => null);
    if (head === null) continue;
    counted.set(head.recording.id, completeRepetitions(head.recording.derived.repetitions).length);
  }
  const isInterrupted = (id: string) => interrupted.some(({ sessionId }) => sessionId === id);
  const items = itemsNow(plan, sessions);
  return leftToday(sessions, { id: plan.id, items }, isInterrupted, (id) => counted.get(id) ?? null, now);
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
