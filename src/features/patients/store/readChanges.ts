import { group, rollup } from 'd3-array';
import type { ChangedRecord } from '#device/storage/createDigests';
import type { RecordingFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { planOfText } from './planOfText';

/**
 * What changed since digests were last brought up to date, read once for all patients: there may be as many changes as
 * there are recordings.
 */
export interface Changes {
  /** By the id of what changed; 'gone' has none. */
  byId: ReadonlyMap<string, readonly ChangedRecord[]>;
  ids: Readonly<Record<ChangedRecord['kind'], readonly string[]>>;
  /** Changed recordings, by the session that they belong to. */
  recordingsOf: ReadonlyMap<string, readonly RecordingFacts[]>;
  /** Ids of changed plans, by pseudonym. */
  plansOf: ReadonlyMap<string, readonly string[]>;
}

export async function readChanges(
  { recordings, plans }: Repository,
  changed: readonly ChangedRecord[],
): Promise<Changes> {
  const idsOf = (kind: ChangedRecord['kind']) =>
    changed.flatMap((one) => (one.kind === kind ? [one.id] : []));
  const ids = {
    session: idsOf('session'),
    recording: idsOf('recording'),
    plan: idsOf('plan'),
    gone: idsOf('gone'),
  };
  const facts = await recordings.facts(ids.recording);
  const placed = facts.flatMap((one) => (one.visitId === null ? [] : [{ ...one, visitId: one.visitId }]));
  const given = await Promise.all(
    ids.plan.map(async (id) => ({ id, plan: planOfText(await plans.find(id).catch(() => null)) })),
  );
  const theirs = given.flatMap(({ id, plan }) => (plan === null ? [] : [{ id, patient: plan.patient }]));
  const plansOf = rollup(
    theirs,
    (found) => found.map(({ id }) => id),
    ({ patient }) => patient,
  );
  return {
    byId: group(changed, ({ id }) => id),
    ids,
    recordingsOf: group(placed, ({ visitId }) => visitId),
    plansOf,
  };
}
