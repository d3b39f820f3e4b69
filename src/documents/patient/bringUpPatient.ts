import { patientVersion, type PatientDocument } from './patientDocument';

/** What each version added, as it is in a record where nothing of it is entered. */
const added = {
  2: { thresholds: {}, decisions: [], assessments: [], repeats: [] },
  3: {
    onset: null,
    surgery: null,
    pauses: [],
    redFlags: [],
    prescribedRestrictions: [],
    overrides: [],
    questionnaires: [],
    ownEye: [],
    criteria: [],
  },
  4: { alsoNoted: [], handOvers: [] },
  5: { log: [], otherVersions: [] },
  6: {},
} satisfies Record<number, Partial<PatientDocument>>;

/** Of a patient for whom nothing of it was recorded. */
export const nothingRecorded = { ...added[2], ...added[3], ...added[4], ...added[5] };

/**
 * Migrates a patient document of an older version. Version 2 added thresholds, decisions on proposals, tests of function
 * and sets that were filmed again; version 3 how it began, surgery, pauses, warning signs asked about, restrictions,
 * questionnaires, judgements by eye and measures for the card of criteria; version 4 what others noted, and hand-overs;
 * version 5 who did what, signed, and other versions of sessions and plans; version 6 other versions of reviews.
 */
export function bringUpPatient(older: object, version: number): object {
  if (version !== 1 && !(version in added)) return older; // There never was such a version.
  const later = Object.entries(added).filter(([since]) => Number(since) > version);
  return Object.assign({}, older, ...later.map(([, fields]) => fields), {
    version: patientVersion,
  }) as object;
}
