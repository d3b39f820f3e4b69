import type { OwnEyeRecord, PauseRecord } from './caseEntries';
import { bothLogs } from './logEntry';
import { withOtherVersion, type OtherVersion } from './otherVersion';
import {
  notedFields,
  type AlsoNoted,
  type PatientDocument,
  type RepeatRecord,
  type SessionMark,
} from './patientDocument';

/**
 * Two records of one patient as one: what was noted last counts; plans, looked-at sessions and all other entries of both are
 * kept. What either took out is out, and of a pause the end that was changed last counts.
 *
 * @param here  whose id stays
 */
export function mergePatients(here: PatientDocument, there: PatientDocument): PatientDocument {
  const isHereNewer = Date.parse(here.changedAt) >= Date.parse(there.changedAt);
  const newer = isHereNewer ? here : there;
  const { painfulSide, since, onset, sites, goals, painRule, restrictions, surgery, changedAt, thresholds } =
    newer;
  const openedFirst = Date.parse(here.openedAt) <= Date.parse(there.openedAt) ? here : there;
  return {
    ...here,
    note: here.note === '' ? there.note : here.note,
    openedAt: openedFirst.openedAt,
    changedAt,
    painfulSide,
    since,
    onset,
    sites,
    goals,
    painRule,
    restrictions,
    surgery,
    plans: withPlans(here, there.plans).plans,
    marks: there.marks.reduce(withMark, here.marks),
    thresholds,
    decisions: both(here.decisions, there.decisions),
    assessments: both(here.assessments, there.assessments, takenOut),
    repeats: there.repeats.reduce(withRepeat, here.repeats),
    pauses: both(here.pauses, there.pauses, changedLast),
    redFlags: both(here.redFlags, there.redFlags, takenOut),
    prescribedRestrictions: both(here.prescribedRestrictions, there.prescribedRestrictions, takenOut),
    overrides: both(here.overrides, there.overrides),
    questionnaires: both(here.questionnaires, there.questionnaires, takenOut),
    ownEye: there.ownEye.reduce(withOwnEye, here.ownEye),
    criteria: both(here.criteria, there.criteria, takenOut),
    alsoNoted: there.alsoNoted.reduce(withAlsoNoted, here.alsoNoted),
    handOvers: both(here.handOvers, there.handOvers),
    log: bothLogs(here.log, there.log),
    otherVersions: there.otherVersions.reduce(withOtherVersion, here.otherVersions),
  };
}

/** The record with these plans among those given, the latest last; the same object where all of them are in it. */
export function withPlans(
  patient: PatientDocument,
  given: readonly PatientDocument['plans'][number][],
): PatientDocument {
  const known = new Set(patient.plans.map(({ id }) => id));
  const added = given.filter(({ id }) => !known.has(id));
  if (added.length === 0) return patient;
  const plans = [...patient.plans, ...added].sort((a, b) => Date.parse(a.givenAt) - Date.parse(b.givenAt));
  return { ...patient, plans };
}

/** The record with a version of a session, plan or review that does not count; the same object where it is in it. */
export function withVersionBeside(patient: PatientDocument, given: OtherVersion): PatientDocument {
  const otherVersions = withOtherVersion(patient.otherVersions, given);
  return otherVersions === patient.otherVersions ? patient : { ...patient, otherVersions };
}

/** What is settled stays settled; the same array where nothing changes. */
export function withMark(marks: readonly SessionMark[], mark: SessionMark): SessionMark[] {
  const before = marks.find(({ visitId }) => visitId === mark.visitId);
  if (before !== undefined && (before.state === 'settled' || before.state === mark.state))
    return marks as SessionMark[];
  return [...marks.filter((one) => one !== before), mark];
}

/** Pairs of recordings that are in the record stay as they are; the same array where nothing changes. */
export function withRepeat(repeats: readonly RepeatRecord[], repeat: RepeatRecord): RepeatRecord[] {
  const isKnown = repeats.some(({ first, second }) => first === repeat.first && second === repeat.second);
  return isKnown ? (repeats as RepeatRecord[]) : [...repeats, repeat];
}

/** A judgement that is in the record stays as it is; the same array where nothing changes. */
export function withOwnEye(kept: readonly OwnEyeRecord[], given: OwnEyeRecord): OwnEyeRecord[] {
  const isKnown = kept.some(
    ({ at, by, recordingId }) => at === given.at && by === given.by && recordingId === given.recordingId,
  );
  return isKnown ? (kept as OwnEyeRecord[]) : [...kept, given];
}

/** Notes that are in the record already are not added twice; the same array where nothing changes. */
function withAlsoNoted(kept: AlsoNoted[], given: AlsoNoted): AlsoNoted[] {
  const text = JSON.stringify(given);
  return kept.some((one) => JSON.stringify(one) === text) ? kept : [...kept, given];
}

/**
 * The same for a record that was handed over: where both noted something else, what was noted last counts, and the
 * other stays beside it.
 *
 * @param by  initials: who keeps the record here, and who handed it over
 */
export function mergeHandedOver(
  here: PatientDocument,
  there: PatientDocument,
  by: { here: string; there: string },
): PatientDocument {
  const merged = mergePatients(here, there);
  const isHereNewer = Date.parse(here.changedAt) >= Date.parse(there.changedAt);
  const other = isHereNewer ? there : here;
  const differing = notedFields.filter(
    (field) => !isEmpty(other[field]) && JSON.stringify(other[field]) !== JSON.stringify(merged[field]),
  );
  if (differing.length === 0) return merged;
  const notes = Object.fromEntries(differing.map((field) => [field, other[field]]));
  const also = { at: other.changedAt, by: isHereNewer ? by.there : by.here, notes };
  return { ...merged, alsoNoted: withAlsoNoted(merged.alsoNoted, also) };
}

function isEmpty(noted: unknown): boolean {
  return noted === null || noted === '' || (Array.isArray(noted) && noted.length === 0);
}

function takenOut<Entry extends { withdrawn: object | null }>(here: Entry, there: Entry): Entry {
  return here.withdrawn === null ? there : here;
}

function changedLast(here: PauseRecord, there: PauseRecord): PauseRecord {
  const time = ({ changed }: PauseRecord) => (changed === null ? -Infinity : Date.parse(changed.at));
  const { to, changed } = time(there) > time(here) ? there : here;
  return { ...takenOut(here, there), to, changed };
}

/** The entries of both in order of time; of one that is in both, what `pick` says. */
function both<Entry extends { id: string; at: string }>(
  here: readonly Entry[],
  there: readonly Entry[],
  pick: (here: Entry, there: Entry) => Entry = (one) => one,
): Entry[] {
  const others = new Map(there.map((entry) => [entry.id, entry]));
  const merged = here.map((entry) => {
    const other = others.get(entry.id);
    return other === undefined ? entry : pick(entry, other);
  });
  const known = new Set(here.map(({ id }) => id));
  return [...merged, ...there.filter(({ id }) => !known.has(id))].sort(
    (a, b) => Date.parse(a.at) - Date.parse(b.at),
  );
}
