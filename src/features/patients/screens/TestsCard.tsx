import { useState } from 'react';
import { Button } from 'react-aria-components';
import { usualLinePct } from '#core/change/limbSymmetry';
import { sides } from '#core/protocol/side';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { assessmentChangeSentence, assessmentSentences, resultWords } from '#words/assessmentSentences';
import { capitalised } from '#words/capitalised';
import { symmetrySentence } from '#words/changeSentences';
import { dayWords } from '#words/dateWords';
import { usePatientsState } from '../patientsContext';
import { assessmentCourses, type AssessmentCourse } from '../rules/assessmentResults';
import { TakeOut } from './TakeOut';
import { TestForm } from './TestForm';
import { TestPlot } from './TestPlot';
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
      {courses.map((course) => (
        <TestCourse key={course.assessment.id} course={course} />
      ))}
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

function TestCourse({ course }: { course: AssessmentCourse }) {
  const { assessment, done, changes, symmetry } = course;
  const last = done.at(-1)!;
  const [result, ...more] = assessmentSentences(assessment, last.results);
  return (
    <article className="programme-item">
      <h3>{assessment.name}</h3>
      <p>
        {result} {dayWords(last.record.at)}, {last.record.by}.
        {last.record.asDone !== '' && ` Done with: ${last.record.asDone}.`}
        {last.record.worstPain !== null && ` Worst pain ${last.record.worstPain} of 10.`}
        {last.record.remark !== '' && ` ${last.record.remark}`}
      </p>
      {symmetry !== null && (
        <p>
          {symmetrySentence(symmetry.found, {
            involved: symmetry.involved,
            before: false,
            linePct: usualLinePct,
          })}
          {symmetry.found.interval !== null &&
            assessment.error !== null &&
            ` Error of one test: ${assessment.error.source}.`}
        </p>
      )}
      {sides.map((side) => {
        const change = changes[side];
        return (
          change !== null && (
            <p key={side}>
              {capitalised(side)}: {assessmentChangeSentence(assessment, change)}
            </p>
          )
        );
      })}
      {done.length > 1 && <TestPlot course={course} />}
      <details className="small">
        <summary>What is published, and each time it was done ({done.length})</summary>
        {more.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <ul>
          {done.map((one) => (
            <li key={one.record.id}>
              {dayWords(one.record.at)}, {one.record.by}:{' '}
              {sides
                .map((side) => {
                  const value = one.results[side];
                  return `${side} ${value === null ? 'not done' : resultWords(assessment, value)}`;
                })
                .join(', ')}{' '}
              <TakeOut list="assessments" id={one.record.id} what="this test" />
            </li>
          ))}
        </ul>
      </details>
    </article>
  );
}
