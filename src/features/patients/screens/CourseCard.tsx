import { useEffect, useMemo, useState } from 'react';
import { useKeptSessions, useKeptSessionsState } from '#features/sessions/keptSessionsContext';
import { Choice } from '#ui/components/Choice';
import { useSize } from '#ui/components/useSize';
import { dayWords } from '#words/dateWords';
import { usePatientsState } from '../patientsContext';
import type { Course, CourseSet } from '../rules/buildCourse';
import { lastWeeksOf, layOutCourse, leastCourseWidth } from '../rules/layOutCourse';
import { AnglePanel } from './AnglePanel';
import { CourseTable } from './CourseTable';
import { DayAxis, FeelingPanels, PlanMarks } from './FeelingPanels';
import { useCourseKeys } from './useCourseKeys';
import './course.css';
import { exerciseName } from '#words/exerciseWords';

const spans = [
  { id: 'last', name: 'Last six weeks' },
  { id: 'all', name: 'All weeks' },
] as const;
type Span = (typeof spans)[number]['id'];

/** The patient's weeks on one time axis; every set opens. */
export function CourseCard({ course: whole }: { course: Course }) {
  const keptSessions = useKeptSessions();
  const opening = useKeptSessionsState((state) => state.opening);
  const pseudonym = usePatientsState((state) => state.patient?.pseudonym) ?? '';
  const [frame, { width: frameWidth }] = useSize<HTMLDivElement>();
  const [span, setSpan] = useState<Span>('last');
  const recent = useMemo(() => lastWeeksOf(whole), [whole]);
  const course = span === 'last' ? recent : whole;
  const width = Math.max(frameWidth, leastCourseWidth(course));
  const layout = useMemo(
    () => (frameWidth === 0 ? null : layOutCourse(course, width)),
    [course, frameWidth, width],
  );
  // The latest sets are seen first where not all fit.
  useEffect(() => {
    frame.current?.scrollTo({ left: frame.current.scrollWidth });
  }, [frame, width]);
  const keys = useCourseKeys(layout);
  const open = ({ recordingId, task, side, number, atMs }: CourseSet) => {
    const day = dayWords(new Date(atMs).toISOString());
    const title = `${pseudonym}, ${day}: ${exerciseName(task)}, ${side}, set ${number}`;
    void keptSessions.openSet(recordingId, title);
  };
  const isEmpty = course.panels.length === 0 && course.feelings.length === 0;
  return (
    <section className="card course" aria-labelledby="course-title">
      <div className="patient-card-head">
        <h2 id="course-title" tabIndex={-1}>
          Course
        </h2>
        {recent !== whole && (
          <Choice label="Weeks shown" isLabelHidden options={spans} value={span} onChange={setSpan} />
        )}
      </div>
      {isEmpty ? (
        <p className="soft">
          Nothing is here yet. The course begins with the first session that comes back, or with the first
          clip that is kept for this patient.
        </p>
      ) : (
        <>
          <p className="small soft">
            Largest inward angle of each repetition with its band, and the set’s mean as a bar; left with
            circles and a whole line, right with squares and a dashed one. A line joins only sets done under
            the same conditions. The shaded lane shows the limits as they stood. Choose a set to open it.
          </p>
          <div ref={frame} className="course-frame" data-busy={opening !== null || undefined} {...keys.frame}>
            {layout !== null && (
              <>
                <PlanMarks layout={layout} width={width} />
                {layout.panels.map((panel) => (
                  <AnglePanel
                    key={panel.task}
                    panel={panel}
                    layout={layout}
                    width={width}
                    current={keys.current}
                    onOpen={open}
                  />
                ))}
                <FeelingPanels layout={layout} width={width} onSelect={keptSessions.select} />
                <DayAxis layout={layout} width={width} />
              </>
            )}
          </div>
          <CourseTable course={course} onOpen={open} />
        </>
      )}
    </section>
  );
}
