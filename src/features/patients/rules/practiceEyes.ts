import { group } from 'd3-array';
import { calendarDay } from '#core/calendarDay';
import type { JudgedByEye, JudgedTwice } from '#core/reliability/eyeAgreement';
import type { OwnEyeRecord } from '#documents/patient/caseEntries';
import type { ListedSession } from '#features/sessions/rules/listedSession';

/** A repetition as a therapist judged it by eye, and as it was measured. */
export interface PracticeEye extends JudgedByEye {
  /** Initials. */
  by: string;
}

/** The same clips are judged again after so many days at least, so that little of the first time is remembered. Common practice, no source. */
export const leastDaysBetween = 7;

/** A repetition that a therapist judged by eye at two times. */
export interface EyeTwice extends JudgedTwice {
  /** Initials. */
  by: string;
}

/**
 * What the same therapist judged twice: of each set the first time, and the first time that is at least a week later.
 * Each repetition is matched by its place in the recording, not by the order in which it was shown; what was skipped
 * once is left out.
 */
export function eyesTwice(records: readonly OwnEyeRecord[]): EyeTwice[] {
  return judgedSets(records).flatMap(([first, ...later]) => {
    const again = later.find(({ at }) => calendarDay(at) - calendarDay(first.at) >= leastDaysBetween);
    const then = new Map(first.answers.map(({ repetition, verdict }) => [repetition, verdict]));
    return (again?.answers ?? []).flatMap(({ repetition, verdict: second }) => {
      const before = then.get(repetition);
      return before === undefined ? [] : [{ by: first.by, first: before, second }];
    });
  });
}

/** The judgements of each set by each therapist, oldest first. */
function judgedSets(records: readonly OwnEyeRecord[]): [OwnEyeRecord, ...OwnEyeRecord[]][] {
  const oldestFirst = [...records].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  return [...group(oldestFirst, ({ by, recordingId }) => `${recordingId} ${by}`).values()] as [
    OwnEyeRecord,
    ...OwnEyeRecord[],
  ][];
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
  return judgedSets(records).flatMap(([{ by, recordingId, answers }]) =>
    answers.flatMap(({ repetition, verdict: eye }) => {
      const found = measured.get(recordingId)?.get(repetition + 1);
      return found === undefined ? [] : [{ by, eye, measured: found }];
    }),
  );
}
