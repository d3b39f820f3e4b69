import { dayWords } from '#words/dateWords';
import type { CourseFeeling } from '../rules/buildCourse';
import { markSentence } from '../rules/courseWords';
import { courseMargins, panelHeights, type CourseLayout } from '../rules/layOutCourse';
import { PlanLines } from './AnglePanel';

interface Props {
  layout: CourseLayout;
  width: number;
}

const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });
const axisHeight = 22;
const markHeight = 20;

/** Pain during, after and the next day, and effort: each from 0 to 10. */
export function FeelingPanels({
  layout,
  width,
  onSelect,
}: Props & { onSelect: (sessionId: string) => void }) {
  if (layout.feelings.length === 0) return null;
  return (
    <>
      <figure className="course-panel">
        <figcaption>
          Pain, 0 to 10 <Key d="M5 1v8M1 5h8" /> during <Key d="M1 1h8v8h-8z" /> after{' '}
          <Key d="M5 0l5 5l-5 5l-5 -5z" /> next day
        </figcaption>
        <Scores layout={layout} width={width} name="Pain" onSelect={onSelect}>
          {(feeling) => [
            { value: feeling.during, d: 'M0 -4v8M-4 0h8' },
            { value: feeling.after, d: 'M-4 -4h8v8h-8z' },
            { value: feeling.nextDay, d: 'M0 -5l5 5l-5 5l-5 -5z' },
          ]}
        </Scores>
      </figure>
      <figure className="course-panel">
        <figcaption>Effort, 0 to 10</figcaption>
        <Scores layout={layout} width={width} name="Effort" onSelect={onSelect}>
          {(feeling) => [{ value: feeling.effort, d: 'M-4 0h8M0 -4l4 4l-4 4l-4 -4z' }]}
        </Scores>
      </figure>
    </>
  );
}

function Key({ d }: { d: string }) {
  return (
    <svg width={10} height={10} viewBox="-1 -1 12 12" className="course-key" aria-hidden="true">
      <path className="course-score" d={d} />
    </svg>
  );
}

interface ScoresProps extends Props {
  name: string;
  onSelect: (sessionId: string) => void;
  /** The values of a session, with the shape of each round 0. */
  children: (feeling: CourseFeeling) => { value: number | null; d: string }[];
}

function Scores({ layout, width, name, onSelect, children }: ScoresProps) {
  const { score, feelings } = layout;
  const right = width - courseMargins.right;
  return (
    <svg
      width={width}
      height={panelHeights.scores}
      role="img"
      aria-label={`${name} over time; the table below has the values`}
    >
      {[0, 5, 10].map((value) => (
        <g key={value}>
          <line
            className="course-grid"
            x1={courseMargins.left}
            x2={right}
            y1={score(value)}
            y2={score(value)}
          />
          <text className="course-tick" x={courseMargins.left - 6} y={score(value) + 4}>
            {value}
          </text>
        </g>
      ))}
      <PlanLines layout={layout} height={panelHeights.scores} />
      {feelings.map(({ feeling, x }) => (
        <g key={feeling.sessionId} className="course-feeling" onClick={() => onSelect(feeling.sessionId)}>
          <title>{feelingSentence(feeling)}</title>
          <rect className="course-hit" x={x - 7} width={14} y={0} height={panelHeights.scores} />
          {children(feeling).map(
            ({ value, d }, at) =>
              value !== null && (
                <path key={at} className="course-score" d={d} transform={`translate(${x} ${score(value)})`} />
              ),
          )}
        </g>
      ))}
    </svg>
  );
}

function feelingSentence({ atMs, during, after, nextDay, effort }: CourseFeeling): string {
  const words = (value: number | null) => (value === null ? 'not given' : String(value));
  return `${dayWords(new Date(atMs).toISOString())}: pain during ${words(during)}, after ${words(after)}, next day ${words(nextDay)}, effort ${words(effort)}`;
}

/** Where plans were given, above everything. */
export function PlanMarks({ layout, width }: Props) {
  const plans = layout.marks.filter(({ kind }) => kind === 'plan');
  if (plans.length === 0) return null;
  return (
    <svg width={width} height={markHeight} role="img" aria-label={plans.map(markSentence).join('. ')}>
      {plans.map((mark, at) => (
        <g key={at}>
          <title>{markSentence(mark)}</title>
          <text className="course-plan-name" x={mark.x} y={markHeight - 6}>
            plan {at + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}

export function DayAxis({ layout, width }: Props) {
  return (
    <svg width={width} height={axisHeight} aria-hidden="true">
      {layout.days.map(({ at, x }) => (
        <text key={at.getTime()} className="course-day" x={x} y={axisHeight - 6}>
          {day.format(at)}
        </text>
      ))}
    </svg>
  );
}
