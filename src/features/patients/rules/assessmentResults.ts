import type { Assessment } from '#core/assessments/assessment';
import { assessmentChange, type AssessmentChange } from '#core/assessments/assessmentChange';
import { findAssessment } from '#core/assessments/assessments';
import { publishedSem } from '#core/assessments/publishedSem';
import { scoreTries } from '#core/assessments/scoreTries';
import { limbSymmetry, symmetryUnits, type Symmetry } from '#core/change/limbSymmetry';
import { otherSide, sides, type Side } from '#core/protocol/side';
import type { AssessmentRecord, PatientDocument } from '#documents/patient/patientDocument';

/** A test as it was done once, with what each leg reached. */
export interface AssessmentResult {
  record: AssessmentRecord;
  results: Record<Side, number | null>;
}

/** A test with its results, oldest first, and what may be said of the latest. */
export interface AssessmentCourse {
  assessment: Assessment;
  done: AssessmentResult[];
  /** Of each leg, against the time before; null where there was none. */
  changes: Record<Side, AssessmentChange | null>;
  /** The painful leg against the other; null where that makes no sense of the unit, or is not known. */
  symmetry: { involved: Side; found: Symmetry } | null;
}

/** The tests of a patient, the one done last first; what was withdrawn is left out. */
export function assessmentCourses(
  records: readonly AssessmentRecord[],
  painfulSide: PatientDocument['painfulSide'],
): AssessmentCourse[] {
  const kept = records.filter(({ withdrawn }) => withdrawn === null);
  const tests = [...new Set([...kept].reverse().map(({ test }) => test))];
  return tests.map((test) => {
    const assessment = findAssessment(test);
    const done = kept
      .filter((record) => record.test === test)
      .map((record) => ({ record, results: resultsOf(assessment, record) }));
    const [before, last] = [done.at(-2), done.at(-1)!];
    const changeOf = (side: Side): AssessmentChange | null => {
      const [then, now] = [before?.results[side] ?? null, last.results[side]];
      if (before === undefined || then === null || now === null) return null;
      const alike = {
        rater: before.record.by === last.record.by,
        protocol: before.record.asDone === last.record.asDone,
      };
      return assessmentChange(assessment, then, now, alike);
    };
    return {
      assessment,
      done,
      changes: { left: changeOf('left'), right: changeOf('right') },
      symmetry: symmetryOf(assessment, last.results, painfulSide),
    };
  });
}

function resultsOf(assessment: Assessment, { tries }: AssessmentRecord): Record<Side, number | null> {
  return { left: scoreTries(assessment, tries.left), right: scoreTries(assessment, tries.right) };
}

/** With the published error of the test; without one there is no interval, and the sentence says so. */
function symmetryOf(
  assessment: Assessment,
  results: Record<Side, number | null>,
  painfulSide: PatientDocument['painfulSide'],
): AssessmentCourse['symmetry'] {
  const involved = sides.find((side) => side === painfulSide);
  if (assessment.better === null) return null;
  if (involved === undefined || !(symmetryUnits as readonly string[]).includes(assessment.unit)) return null;
  const [own, other] = [results[involved], results[otherSide(involved)]];
  if (own === null || other === null || other <= 0) return null;
  const sem = publishedSem(assessment);
  return { involved, found: limbSymmetry({ value: own, sem }, { value: other, sem }) };
}

/** '18, 20 21': the tries as they were typed; null where one is no number that the test can have. */
export function parseTries(text: string, { most }: Pick<Assessment, 'most'>): number[] | null {
  const parts = text.split(/[;\s]+|,(?=\s)/).filter((part) => part !== '');
  const values = parts.map((part) => Number(part.replace(',', '.')));
  const isSound = values.every(
    (value) => Number.isFinite(value) && value >= 0 && (most === null || value <= most),
  );
  return isSound ? values : null;
}

/** What is wrong with the worst pain as it was typed; null where nothing is, or nothing was typed. */
export function painLack(text: string): string | null {
  return /^([0-9]|10)?$/.test(text.trim()) ? null : 'Pain is a whole number from 0 to 10.';
}
