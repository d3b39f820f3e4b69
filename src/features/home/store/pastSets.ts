import { findExercise } from '#core/exercises/exercises';
import type { RecordingFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { freeRecording } from '#documents/plan/freeRecording';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import { summariseSet } from '../guide/summariseSet';
import type { HomeSet } from './homeState';

type Found = { recording: RecordingHead; facts: RecordingFacts };

/** The sets of an earlier session, as its result shows them; those that can't be shown are left out. */
export async function pastSets(
  { sets }: Pick<SessionDocument, 'sets'>,
  plan: Pick<PlanDocument, 'items'>,
  recordings: Pick<Repository['recordings'], 'findHead'>,
): Promise<HomeSet[]> {
  const past: HomeSet[] = [];
  for (const set of sets) {
    const { sessionId: id } = set;
    const found = id === null ? null : await recordings.findHead(id).catch(() => null);
    const item = itemOf(set, plan);
    if (item !== null) past.push(pastSet(set, item, found));
  }
  return past;
}

/** The plan may have been changed since. */
function itemOf(
  { item: index, task, side, prescribedRepetitions }: SessionSet,
  { items }: Pick<PlanDocument, 'items'>,
): PlanItem | null {
  const same = [items[index], ...items].find((item) => item?.task === task);
  if (same !== undefined) return same;
  const exercise = findExercise(task);
  return exercise.kind === 'task'
    ? freeRecording({ task: exercise.id, side, sets: 1, repetitions: prescribedRepetitions ?? 1 })
    : null;
}

function pastSet(set: SessionSet, item: PlanItem, found: Found | null): HomeSet {
  const { item: itemIndex, task, side, number, prescribedRepetitions: prescribed, painDuring } = set;
  const { heldMs, cutShort } = set;
  const result = { stepIndex: 0, itemIndex, task, side, number, prescribed, counted: null, heldMs, cutShort };
  const common = { item, painDuring, isDiscarded: false, problem: null };
  if (found === null) {
    const nothing = {
      recordingId: null,
      keeping: 'none',
      found: null,
      judgements: [],
      summary: null,
    } as const;
    return { ...common, ...nothing, result: { ...result, isRecorded: false }, numbers: 'none' };
  }
  const { id, limits, derived } = found.recording;
  const repetitions = completeRepetitions(derived.repetitions);
  return {
    ...common,
    result: { ...result, isRecorded: true },
    recordingId: id,
    keeping: 'kept',
    found: repetitions.length,
    judgements: repetitions.map(({ judgement }) => judgement),
    summary: summariseSet(repetitions, limits, prescribed, derived.isSideDoubtful),
    numbers: numbersOf[found.facts.fromVideo],
  };
}

const numbersOf = { waiting: 'coming', done: 'careful', declined: 'first', impossible: 'first' } as const;
