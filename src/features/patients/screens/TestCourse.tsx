import { usualLinePct } from '#core/change/limbSymmetry';
import { sides } from '#core/protocol/side';
import { assessmentChangeSentence, assessmentSentences, classedResult } from '#words/assessmentSentences';
import { capitalised } from '#words/capitalised';
import { symmetrySentence } from '#words/changeSentences';
import { dayWords } from '#words/dateWords';
import type { AssessmentCourse } from '../rules/assessmentResults';
import { TakeOut } from './TakeOut';
import { TestPlot } from './TestPlot';

/** One test: the latest result of both legs, what may be said of it, and each time it was done. */
export function TestCourse({ course }: { course: AssessmentCourse }) {
  const { assessment, done, changes, symmetry } = course;
  const last = done.at(-1)!;
  const [result, ...more] = assessmentSentences(assessment, last.results);
  return (
    <article className="programme-item">
      <h4>{assessment.name}</h4>
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
                  return `${side} ${value === null ? 'not done' : classedResult(assessment, value)}`;
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
