import { thresholdsOf } from '#core/programme/proposalThresholds';
import { countSet } from '#core/scoring/countSet';
import type { Repository } from '#device/storage/repository';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { StagedSession, StagedSet } from '#documents/programme/stageCourseOf';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import { settlementOf } from '#documents/session/settlementOf';

/** Sessions that are read for each that the rules look at: an exercise may have been left out of the others. */
const readForEach = 3;

/**
 * The last sessions of a plan, as the rules for what to do next need them; none where the plan lets the device change
 * nothing.
 *
 * @param sessions  newest first
 */
export async function readStaged(
  plan: Pick<PlanDocument, 'id' | 'autoStep' | 'thresholds'>,
  sessions: readonly SessionDocument[],
  recordings: Pick<Repository['recordings'], 'findHead'>,
): Promise<StagedSession[]> {
  if (plan.autoStep !== 'within-plan') return [];
  const mostRead = readForEach * thresholdsOf(plan.thresholds).sessions;
  const theirs = sessions.filter(({ planId }) => planId === plan.id).slice(0, mostRead);
  return Promise.all(
    theirs.map(async (session) => ({
      ...session,
      settlement: settlementOf(session.id, sessions),
      sets: await Promise.all(session.sets.map((line) => stagedSet(line, recordings))),
    })),
  );
}

async function stagedSet(
  line: SessionSet,
  recordings: Pick<Repository['recordings'], 'findHead'>,
): Promise<StagedSet> {
  const { sessionId: id } = line;
  const found = id === null ? null : await recordings.findHead(id).catch(() => null);
  if (found === null) return { line, asked: null, measured: null };
  const { derived, limits } = found.recording;
  const complete = completeRepetitions(derived.repetitions);
  return {
    line,
    asked: null,
    measured: {
      found: complete.length,
      inLine: countSet(complete, limits),
      peaksDeg: complete.map(({ ranges }) => ranges['knee-angle'].max?.value ?? null),
    },
  };
}
