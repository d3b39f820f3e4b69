import { group } from 'd3-array';
import type { JudgedByEye } from '#core/reliability/eyeAgreement';
import type { OwnEyeRecord } from '#documents/patient/caseEntries';
import type { ListedSession } from '#features/sessions/rules/listedSession';

/** A repetition as a therapist judged it by eye, and as it was measured. */
export interface PracticeEye extends JudgedByEye {
  /** Initials. */
  by: string;
}

/**
 * What was judged by eye of one patient's sets, next to what was measured. Of each set the first judgement of each
 * therapist counts: later ones were made after the result was seen. What no longer counts in its recording is left out.
 */
export function practiceEyes(
  records: readonly OwnEyeRecord[],
  sessions: readonly ListedSession[],
): PracticeEye[] {
  const measured = new Map(
    sessions.flatMap(({ sets }) =>
      sets.flatMap(({ line: { sessionId: id }, reading }) =>
        id === null || reading.state !== 'read' || reading.course === undefined
          ? []
          : [[id, new Map(reading.course.points.map(({ number, verdict }) => [number, verdict]))] as const],
      ),
    ),
  );
  const oldestFirst = [...records].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const first = [...group(oldestFirst, ({ by, recordingId }) => `${recordingId} ${by}`).values()];
  return first.flatMap(([record]) =>
    record!.answers.flatMap(({ repetition, verdict: eye }) => {
      const found = measured.get(record!.recordingId)?.get(repetition + 1);
      return found === undefined ? [] : [{ by: record!.by, eye, measured: found }];
    }),
  );
}
