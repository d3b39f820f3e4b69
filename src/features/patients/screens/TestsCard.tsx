import type { ListedSession } from '#features/sessions/rules/listedSession';
import { usePatientsState } from '../patientsContext';
import { assessmentCourses } from '../rules/assessmentResults';
import { isOfReach } from '../rules/reachResults';
import { FoldCard } from './FoldCard';
import { OpensForm } from './OpensForm';
import { ReachCourse } from './ReachCourse';
import { TestCourse } from './TestCourse';
import { TestForm } from './TestForm';
import './programme.css';

/** Tests of function that were written down by hand, with their course and what may be told. */
export function TestsCard({ sessions }: { sessions: readonly ListedSession[] }) {
  const patient = usePatientsState((state) => state.patient);
  if (patient === null) return null;
  const courses = assessmentCourses(patient.assessments, patient.painfulSide);
  return (
    <FoldCard
      id="tests-title"
      title="Tests of function"
      empty={courses.length === 0 ? 'None is written down yet.' : null}
    >
      {courses.length === 0 && <p className="soft">A test has a fixed protocol and takes both legs.</p>}
      {courses
        .filter(({ assessment }) => !isOfReach(assessment.id))
        .map((course) => (
          <TestCourse key={course.assessment.id} course={course} />
        ))}
      <ReachCourse courses={courses.filter(({ assessment }) => isOfReach(assessment.id))} />
      <OpensForm label="Write down a test">
        {(close) => <TestForm sessions={sessions} onClose={close} />}
      </OpensForm>
    </FoldCard>
  );
}
