import { mergeLibraries } from '../library/libraryChanges';
import type { LibraryDocument } from '../library/libraryDocument';
import { mergeHandedOver, mergePatients } from '../patient/mergePatients';
import type { PatientDocument } from '../patient/patientDocument';
import { withKeptWork } from '../recording/keptWork';
import type { RecordingDocument } from '../recording/recordingDocument';
import type { SessionDocument } from '../session/sessionDocument';
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
 * What is made of two versions that were both changed. It is the same on both devices: which one is 'here' does not
 * matter. The patient's record follows the rule for a record that is handed over, with what differed beside it; of two
 * sessions and plans the later one counts; of a recording the work of both is kept as far as it differs. Of each entry of
 * the library, what happened last counts.
 */
const apart: { [Kind in SharedKind]: Merge<SharedDocuments[Kind]> } = {
  library: mergeLibraries,
  patient(here, there, by) {
    const [first, second] = inOrder('patient', here, there, ({ changedAt }) => Date.parse(changedAt));
    const isHere = first === here;
    const merged = mergeHandedOver(first, second, isHere ? by : { here: by.there, there: by.here });
    return { ...merged, id: here.id, note: here.note };
  },
  plan: (here, there) => inOrder('plan', here, there, ({ savedAt }) => Date.parse(savedAt))[0],
  session(here, there) {
    const [first, second] = inOrder('session', here, there, ({ endedAt }) =>
      endedAt === null ? 0 : Date.parse(endedAt),
    );
    return withSettlements(first, second);
  },
  recording(here, there) {
    const reviewedAt = ({ review }: RecordingDocument) => Date.parse(review?.reviewed?.at ?? '1970-01-01');
    const [first, second] = inOrder('recording', here, there, reviewedAt);
    return withKeptWork(second, first);
  },
  piece: (here) => here,
};

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
): SharedDocuments[Kind] {
  return (standing === 'newer' ? following : apart)[kind](here, there, by);
}

/** The one that counts first: the later one; of two of one time, always the same one. */
function inOrder<Kind extends SharedKind>(
  kind: Kind,
  a: SharedDocuments[Kind],
  b: SharedDocuments[Kind],
  timeMsOf: (document: SharedDocuments[Kind]) => number,
): [SharedDocuments[Kind], SharedDocuments[Kind]] {
  const [timeA, timeB] = [timeMsOf(a), timeMsOf(b)];
  const isFirst = timeA === timeB ? contentHash(kind, a) > contentHash(kind, b) : timeA > timeB;
  return isFirst ? [a, b] : [b, a];
}

/** A session with what was settled in either. */
function withSettlements(session: SessionDocument, other: SessionDocument): SessionDocument {
  const known = new Set(session.settles.map((one) => JSON.stringify(one)));
  const added = other.settles.filter((one) => !known.has(JSON.stringify(one)));
  return added.length === 0 ? session : { ...session, settles: [...session.settles, ...added] };
}
