import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { calendarDay } from '#core/calendarDay';
import { capitalised } from '#words/capitalised';
import { changeSentences, courseSentences, noImportantChange, sideSentence } from '#words/changeSentences';
import { datedDay } from '#words/dayName';
import { exerciseName } from '#words/exerciseWords';
import type { Course } from '../rules/buildCourse';
import { sideChanges, type TrackChange } from '../rules/changes';
import { SmallPlot, smallPlot } from './SmallPlot';
import './programme.css';

/** What changed beyond error in each exercise and leg, and whether the legs differ. */
export function ChangeCard({ course, changes }: { course: Course; changes: readonly TrackChange[] }) {
  const sides = sideChanges(course);
  if (changes.length === 0) return null;
  return (
    <section className="card programme" aria-labelledby="change-title">
      <h2 id="change-title">Change and sides</h2>
      {changes.map((change) => (
        <Track key={`${change.task} ${change.side}`} track={change} />
      ))}
      {sides.map(({ task, difference }) => (
        <p key={task}>
          <strong>{exerciseName(task)}, both legs.</strong> {sideSentence(difference)} Days with both legs,
          done alike: {difference.days}.
        </p>
      ))}
      <p className="small soft">{noImportantChange}</p>
    </section>
  );
}

function Track({ track }: { track: TrackChange }) {
  const { task, side, change, tests, days, leftOut } = track;
  const told =
    change === null
      ? ['Only the newest day so far, or no other is like it: a change takes two.']
      : changeSentences(change);
  const course =
    tests === null
      ? ['No set was done as a test, without feedback, so there is no course over weeks.']
      : courseSentences(tests, datedDay);
  const sentences = [...told, ...course].filter((sentence) => sentence !== noImportantChange);
  return (
    <article className="programme-item">
      <h3>
        {exerciseName(task)}, {side}
      </h3>
      {days.length > 1 && <DayPlot track={track} />}
      {sentences.map((sentence) => (
        <p key={sentence}>{capitalised(sentence)}</p>
      ))}
      {leftOut > 0 && (
        <p className="small">
          Days that were done or measured otherwise than the newest, and are not compared: {leftOut}.
        </p>
      )}
    </article>
  );
}

/** The mean of each day with its error, degrees, inward up. */
function DayPlot({ track: { days: sets, semDeg } }: { track: TrackChange }) {
  const days = sets.map(({ atMs, peak }) => ({ day: calendarDay(atMs), meanDeg: peak.meanDeg }));
  const band = 1.96 * semDeg;
  const [firstDay = 0, lastDay = 0] = extent(days, ({ day }) => day);
  const x = scaleLinear(
    [firstDay, lastDay],
    [smallPlot.left + smallPlot.inset, smallPlot.width - smallPlot.right - smallPlot.inset],
  );
  const values = days.flatMap(({ meanDeg }) => [meanDeg - band, meanDeg + band]);
  const [least = 0, most = 0] = extent(values);
  const y = scaleLinear([least, most], [smallPlot.height - smallPlot.bottom, smallPlot.top]).nice(3);
  return (
    <SmallPlot
      label={`Mean inward angle of ${days.length} days, from ${Math.round(days[0]!.meanDeg)} to ${Math.round(days.at(-1)!.meanDeg)} degrees`}
      y={y}
      tickWords={(tick) => `${tick}°`.replace('-', '−')}
      from={datedDay(firstDay)}
      to={datedDay(lastDay)}
    >
      {days.map(({ day, meanDeg }) => (
        <g key={day}>
          <line
            x1={x(day)}
            x2={x(day)}
            y1={y(meanDeg - band)}
            y2={y(meanDeg + band)}
            className="programme-band"
          />
          <circle cx={x(day)} cy={y(meanDeg)} r={3.5} />
        </g>
      ))}
    </SmallPlot>
  );
}
