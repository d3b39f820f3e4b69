import { mergeLibraries } from '../library/libraryChanges';
import type { LibraryDocument } from '../library/libraryDocument';
import { mergeHandedOver, mergePatients } from '../patient/mergePatients';
import { reviewBeside } from '../patient/otherReview';
import type { OtherVersion } from '../patient/otherVersion';
import type { PatientDocument } from '../patient/patientDocument';
import { withKeptWork } from '../recording/keptWork';
import type { RecordingDocument } from '../recording/recordingDocument';
import { withWordsOf } from '../recording/withWordsOf';
import type { SessionDocument } from '../session/sessionDocument';
import { lastSettledAt, versionText, withSettlements } from '../session/sessionVersions';
import { contentHash } from './contentHash';
import type { SharedKind } from './sharedHead';
import type { SharedPiece } from './sharedPiece';

/** A plan as it is kept. */
export interface SharedPlan {
  id: string;
  savedAt: string;
  text: string;
}

/** What is shared, by its kind. */
export interface SharedDocuments {
  library: LibraryDocument;
  patient: PatientDocument;
  plan: SharedPlan;
  session: SessionDocument;
  recording: RecordingDocument;
  piece: SharedPiece;
}
export type SharedDocument = SharedDocuments[SharedKind];

/** Who made each version, initials. */
export interface Authors {
  here: string;
  there: string;
}

type Merge<Value> = (here: Value, there: Value, by: Authors) => Value;

/** What is made of a version that was made from the one here: what it says counts, and no entry is lost. */
const following: { [Kind in SharedKind]: Merge<SharedDocuments[Kind]> } = {
  library: mergeLibraries,
  patient(here, there) {
    // Clocks differ between devices: what was made from the other is newer whatever they say.
    const isBehind = Date.parse(here.changedAt) >= Date.parse(there.changedAt);
    const before = new Date(Date.parse(there.changedAt) - 1).toISOString();
    return mergePatients(isBehind ? { ...here, changedAt: before } : here, there);
  },
  plan: (_, there) => there,
  session: (here, there) => withSettlements(there, here),
  recording: (_, there) => there,
  piece: (here) => here,
};

/**
 * What is made of two versions that were both changed. It is the same on all devices: which one is 'here' does not
 * matter. The patient's record follows the rule for a record that is handed over, with what differed beside it; of two
 * sessions and plans the one that was signed last counts; of a recording the review that was signed last
 * counts, with all limits and remarks of both. Of each entry of the library, what happened last counts.
 */
const apart: { [Kind in SharedKind]: Merge<SharedDocuments[Kind]> } = {
  library: mergeLibraries,
  patient(here, there, by) {
    const [first, second] = inOrder(here, there, (one) => [
      Date.parse(one.changedAt),
      contentHash('patient', one),
    ]);
    const isHere = first === here;
    const merged = mergeHandedOver(first, second, isHere ? by : { here: by.there, there: by.here });
    return { ...merged, id: here.id, note: here.note };
  },
  plan: (here, there) =>
    inOrder(here, there, (one) => [Date.parse(one.savedAt), contentHash('plan', one)])[0],
  session(here, there) {
    const [first, second] = inOrder(here, there, (one) => [
      lastSettledAt(one),
      one.endedAt === null ? 0 : Date.parse(one.endedAt),
      versionText(one), // What was settled in either is in both by then.
    ]);
    return withSettlements(first, second);
  },
  recording(here, there) {
    const [first, second] = inOrder(here, there, (one) => [
      Date.parse(one.review?.reviewed?.at ?? '1970-01-01'),
      contentHash('recording', one),
    ]);
    return withKeptWork(second, withWordsOf(first, second));
  },
  piece: (here) => here,
};

/**
 * As what a version is kept in the patient's record beside what counts: null where nothing of it is left out, and for
 * kinds of which none is kept.
 */
const keptAs: {
  [Kind in SharedKind]:
    ((version: SharedDocuments[Kind], counts: SharedDocuments[Kind]) => Omit<Beside, 'by'> | null) | null;
} = {
  library: null, // Of each entry one version counts.
  patient: null, // It keeps what differed by itself.
  plan: ({ id, text }, counts) => (text === counts.text ? null : { kind: 'plan', of: id, text }),
  session(session, counts) {
    const text = versionText(session);
    return text === versionText(counts) ? null : { kind: 'visit', of: session.id, text };
  },
  recording: reviewBeside, // All of it would be larger than the record can be.
  piece: null,
};

/** A version that does not count, and initials of who had it. */
export type Beside = Omit<OtherVersion, 'at'>;

export interface MergedShared<Kind extends SharedKind> {
  counts: SharedDocuments[Kind];
  /** The version that does not count, to be kept in the patient's record; null where nothing of it is left out. */
  beside: Beside | null;
}

/**
 * Two versions of one document as one.
 *
 * @param standing  of the one that arrives
 * @throws LibraryFull
 */
export function mergeShared<Kind extends SharedKind>(
  kind: Kind,
  standing: 'newer' | 'apart',
  [here, there]: readonly [SharedDocuments[Kind], SharedDocuments[Kind]],
  by: Authors,
): MergedShared<Kind> {
  if (standing === 'newer') return { counts: following[kind](here, there, by), beside: null };
  const counts = apart[kind](here, there, by);
  const asKept = keptAs[kind];
  if (asKept === null) return { counts, beside: null };
  const [ofHere, ofThere] = [asKept(here, counts), asKept(there, counts)];
  if (ofHere !== null) return { counts, beside: { ...ofHere, by: by.here } };
  return { counts, beside: ofThere === null ? null : { ...ofThere, by: by.there } };
}

/**
 * The one that counts first.
 *
 * @param rankOf  what decides, the weightiest first: the larger one counts
 */
function inOrder<Document>(
  a: Document,
  b: Document,
  rankOf: (document: Document) => readonly (number | string)[],
): [Document, Document] {
  const [ofA, ofB] = [rankOf(a), rankOf(b)];
  const at = ofA.findIndex((rank, index) => rank !== ofB[index]);
  return at < 0 || ofA[at]! > ofB[at]! ? [a, b] : [b, a];
}
