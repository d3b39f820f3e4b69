import type { Repository } from '#device/storage/repository';
import { readOtherReview, reviewOf } from '#documents/patient/otherReview';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { readSession } from '#documents/session/readSession';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { planDifferences, reviewDifferences, sessionDifferences } from '../rules/versionDifferences';
import { planOfText } from './planOfText';

/** Another version of a session, plan or review, which does not count. */
export interface ShownVersion {
  /** 'Session of Sun 5 Apr 2026', or 'Review of “Single-leg squat”, left, of Sun 5 Apr 2026'. */
  name: string;
  /** Initials of who had it, and when both came together. */
  by: string;
  at: string;
  /** In what it differs from the one that counts, a sentence each. */
  differences: string[];
}

/** The other versions that a record keeps; those that are the same as what counts by now are left out. */
export async function readOtherVersions(
  { sessions, plans, recordings }: Pick<Repository, 'sessions' | 'plans' | 'recordings'>,
  { otherVersions }: Pick<PatientDocument, 'otherVersions'>,
): Promise<ShownVersion[]> {
  const comparedWith: Record<Kind, (of: string, text: string) => Promise<Compared>> = {
    visit: async (of, text) => comparedSessions(await sessions.find(of).catch(() => null), text),
    plan: async (of, text) => comparedPlans(planOfText(await plans.find(of).catch(() => null)), text),
    async review(of, text) {
      const kept = await recordings.findHead(of).catch(() => null);
      return comparedReviews(kept?.recording ?? null, text);
    },
  };
  const shown: ShownVersion[] = [];
  for (const { kind, of, by, at, text } of otherVersions) {
    const compared = await comparedWith[kind](of, text);
    if (compared.differences.length > 0) shown.push({ ...compared, by, at });
  }
  return shown;
}

type Kind = PatientDocument['otherVersions'][number]['kind'];
type Compared = Pick<ShownVersion, 'name' | 'differences'>;

const gone = 'The one that counts is no longer kept here.';
const notHere = 'The set is not kept on this device.';
const unreadable = 'It can’t be read.';

function comparedSessions(counts: Parameters<typeof sessionDifferences>[1] | null, text: string): Compared {
  try {
    const other = readSession(JSON.parse(text));
    return {
      name: `Session of ${dayWords(other.startedAt)}`,
      differences: counts === null ? [gone] : sessionDifferences(other, counts),
    };
  } catch {
    return { name: 'Session', differences: [unreadable] };
  }
}

function comparedPlans(counts: ReturnType<typeof planOfText>, text: string): Compared {
  const other = planOfText(text);
  if (other === null) return { name: 'Plan', differences: [unreadable] };
  return {
    name: `Plan of ${dayWords(other.createdAt)}`,
    differences: counts === null ? [gone] : planDifferences(other, counts),
  };
}

function comparedReviews(counts: RecordingHead | null, text: string): Compared {
  const other = readOtherReview(text);
  if (other === null) return { name: 'Review of a set', differences: [unreadable] };
  const { task, side, createdAt } = other;
  return {
    name: `Review of “${exerciseName(task)}”, ${side}, of ${dayWords(createdAt)}`,
    differences: counts === null ? [notHere] : reviewDifferences(other, reviewOf(counts)),
  };
}
