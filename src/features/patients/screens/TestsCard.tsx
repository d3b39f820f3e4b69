import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { usePatientsState } from '../patientsContext';
import { assessmentCourses } from '../rules/assessmentResults';
import { isOfReach } from '../rules/reachResults';
import { ReachCourse } from './ReachCourse';
import { TestCourse } from './TestCourse';
import { TestForm } from './TestForm';
import './programme.css';

/** Tests of function that were written down by hand, with their course and what may be told. */
export function TestsCard({ sessions }: { sessions: readonly ListedSession[] }) {
  const patient = usePatientsState((state) => state.patient);
  const [isWriting, setWriting] = useState(false);
  if (patient === null) return null;
  const courses = assessmentCourses(patient.assessments, patient.painfulSide);
  return (
    <section className="card programme" aria-labelledby="tests-title">
      <h2 id="tests-title">Tests of function</h2>
      {courses.length === 0 && !isWriting && (
        <p className="soft">None is written down yet. A test has a fixed protocol and takes both legs.</p>
      )}
      {courses
        .filter(({ assessment }) => !isOfReach(assessment.id))
        .map((course) => (
          <TestCourse key={course.assessment.id} course={course} />
        ))}
      <ReachCourse courses={courses.filter(({ assessment }) => isOfReach(assessment.id))} />
      {isWriting ? (
        <TestForm sessions={sessions} onClose={() => setWriting(false)} />
      ) : (
        <div className="button-row">
          <Button className="button" onPress={() => setWriting(true)}>
            Write down a test
          </Button>
        </div>
      )}
    </section>
  );
}
