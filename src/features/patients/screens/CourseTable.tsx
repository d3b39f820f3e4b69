import { useState } from 'react';
import { Button } from 'react-aria-components';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import type { Course, CourseSet } from '../rules/buildCourse';
import {
  conditionsWords,
  inLineWords,
  limitsWords,
  markSentence,
  meanWords,
  peaksWords,
} from '../rules/courseWords';

interface Props {
  course: Course;
  onOpen: (set: CourseSet) => void;
}

const dayOf = (atMs: number) => dayWords(new Date(atMs).toISOString());
const scoreOf = (score: number | null) => (score === null ? '–' : score);

/** The same as the picture, for those who can't see it; written once it is opened. */
export function CourseTable(props: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="course-tables" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>The same as tables</summary>
      {isOpen && <Tables {...props} />}
    </details>
  );
}

function Tables({ course, onOpen }: Props) {
  const sets = course.panels
    .flatMap(({ tracks }) => tracks.flatMap((track) => track.sets))
    .sort((a, b) => b.atMs - a.atMs);
  return (
    <>
      {sets.length > 0 && (
        <div className="course-scroll" role="region" aria-label="Sets" tabIndex={0}>
          <table>
            <caption>Sets, latest first</caption>
            <thead>
              <tr>
                {[
                  'Day',
                  'Exercise',
                  'Side',
                  'Set',
                  'Mean',
                  'In line',
                  'Repetitions',
                  'Limits',
                  'Conditions',
                ].map((head) => (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {sets.map((set) => (
                <tr key={set.recordingId}>
                  <th scope="row">
                    <Button className="link-button" onPress={() => onOpen(set)}>
                      {dayOf(set.atMs)}
                    </Button>
                  </th>
                  <td>{exerciseName(set.task)}</td>
                  <td>{set.side}</td>
                  <td className="number">{set.number}</td>
                  <td>{meanWords(set)}</td>
                  <td>{inLineWords(set)}</td>
                  <td>{peaksWords(set)}</td>
                  <td>{limitsWords(set.limits)}</td>
                  <td>{conditionsWords(set.conditions)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {course.feelings.length > 0 && (
        <table>
          <caption>Pain and effort, 0 to 10, latest first</caption>
          <thead>
            <tr>
              {['Day', 'Pain during', 'after', 'next day', 'Effort'].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {[...course.feelings].reverse().map(({ sessionId, atMs, during, after, nextDay, effort }) => (
              <tr key={sessionId}>
                <th scope="row">{dayOf(atMs)}</th>
                <td>{scoreOf(during)}</td>
                <td>{scoreOf(after)}</td>
                <td>{scoreOf(nextDay)}</td>
                <td>{scoreOf(effort)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {course.marks.length > 0 && (
        <ul>
          {course.marks.map((mark, at) => (
            <li key={at}>{markSentence(mark)}</li>
          ))}
        </ul>
      )}
    </>
  );
}
