import type { Repository } from '#device/storage/repository';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { readSession } from '#documents/session/readSession';
import { dayWords } from '#words/dateWords';
import { planDifferences, sessionDifferences } from '../rules/versionDifferences';
import { planOfText } from './planOfText';

/** Another version of a session or plan, which does not count. */
export interface ShownVersion {
  /** 'Session of Sun 5 Apr 2026'. */
  name: string;
  /** Initials of who had it, and when both came together. */
  by: string;
  at: string;
  /** In what it differs from the one that counts, a sentence each. */
  differences: string[];
}

/** The other versions that a record keeps; those that are the same as what counts by now are left out. */
export async function readOtherVersions(
  { sessions, plans }: Pick<Repository, 'sessions' | 'plans'>,
  { otherVersions }: Pick<PatientDocument, 'otherVersions'>,
): Promise<ShownVersion[]> {
  const shown: ShownVersion[] = [];
  for (const { kind, of, by, at, text } of otherVersions) {
    const compared =
      kind === 'visit'
        ? comparedSessions(await sessions.find(of).catch(() => null), text)
        : comparedPlans(planOfText(await plans.find(of).catch(() => null)), text);
    if (compared.differences.length > 0) shown.push({ ...compared, by, at });
  }
  return shown;
}

type Compared = Pick<ShownVersion, 'name' | 'differences'>;

const gone = 'The one that counts is no longer kept here.';
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
