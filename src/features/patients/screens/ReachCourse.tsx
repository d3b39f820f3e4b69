import { sides, type Side } from '#core/protocol/side';
import { capitalised } from '#words/capitalised';
import { dayWords } from '#words/dateWords';
import { oneDecimal } from '#words/oneDecimal';
import type { AssessmentCourse } from '../rules/assessmentResults';
import { reachDirections, reachResults } from '../rules/reachResults';
import { TestCourse } from './TestCourse';

/** The balance reach of its latest day, in percent of the leg where its length is known, and each direction by itself. */
export function ReachCourse({ courses }: { courses: readonly AssessmentCourse[] }) {
  const found = reachResults(courses);
  if (found === null)
    return courses.map((course) => <TestCourse key={course.assessment.id} course={course} />);
  const { at, by, asDone, legs } = found;
  return (
    <article className="programme-item">
      <h4>Balance reach, three directions</h4>
      <p>
        {dayWords(at)}, {by}.{asDone !== '' && ` Done with: ${asDone}.`} The best of the tries, and in percent
        of the leg:
      </p>
      <table className="programme-reach">
        <thead>
          <tr>
            <th scope="col">Standing leg</th>
            {sides.map((side) => (
              <th key={side} scope="col">
                {capitalised(side)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Row name="Length of the leg" cell={(side) => cmWords(legs[side].legCm)} />
          {reachDirections.map(({ test, name }, index) => (
            <Row
              key={test}
              name={name}
              cell={(side) => {
                const cm = legs[side].reachCm[index] ?? null;
                const pct = shareWords(cm, legs[side].legCm);
                return `${cmWords(cm)}${pct === null ? '' : ` (${pct})`}`;
              }}
            />
          ))}
          <Row
            name="Mean of the three"
            cell={(side) => {
              const { ofLeg } = legs[side];
              return ofLeg === null ? 'not told' : pctWords(ofLeg.compositePct);
            }}
          />
        </tbody>
      </table>
      {sides.some((side) => legs[side].ofLeg === null) && (
        <p className="small soft">
          The mean takes all three directions on one day, and the length of the leg.
        </p>
      )}
      <p>No norms known. No error of the mean is known to us, so no change of it is told.</p>
      <details className="small">
        <summary>Each direction by itself, with its course</summary>
        {courses.map((course) => (
          <TestCourse key={course.assessment.id} course={course} />
        ))}
      </details>
    </article>
  );
}

function Row({ name, cell }: { name: string; cell: (side: Side) => string }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      {sides.map((side) => (
        <td key={side}>{cell(side)}</td>
      ))}
    </tr>
  );
}

function cmWords(cm: number | null): string {
  return cm === null ? 'not done' : `${oneDecimal(cm)} cm`;
}

const pctWords = (pct: number) => `${Math.round(pct)} %`;

/** Null without a reach or a length. */
function shareWords(cm: number | null, legCm: number | null): string | null {
  return cm === null || legCm === null || legCm <= 0 ? null : pctWords((100 * cm) / legCm);
}
