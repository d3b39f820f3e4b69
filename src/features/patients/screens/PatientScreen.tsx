import { useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { flushSync } from 'react-dom';
import { useKeptSessions, useKeptSessionsState } from '#features/sessions/keptSessionsContext';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { DeletePatient } from '#features/sessions/screens/DeletePatient';
import { Removals } from '#features/sessions/screens/Removals';
import { SessionDetail } from '#features/sessions/screens/SessionDetail';
import { useNavigation, useNavigationState } from '#shell/navigation/navigationContext';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { usePatients, usePatientsState } from '../patientsContext';
import { buildCourse, type Course } from '../rules/buildCourse';
import { trackChanges, type TrackChange } from '../rules/changes';
import { errorBetweenDays } from '../rules/practiceRepeats';
import { AdherenceCard } from './AdherenceCard';
import { ChangeCard } from './ChangeCard';
import { CourseCard } from './CourseCard';
import { CriteriaCard } from './CriteriaCard';
import { EyeCard } from './EyeCard';
import { HandOverCard } from './HandOverCard';
import { OtherVersions } from './OtherVersions';
import { OwnErrorCard } from './OwnErrorCard';
import { PatientGroup } from './PatientGroup';
import { PatientJumps } from './PatientJumps';
import { PatientNeeds } from './PatientNeeds';
import { PatientSessions } from './PatientSessions';
import { PlanCard } from './PlanCard';
import { ProgrammeCard } from './ProgrammeCard';
import { QuestionnairesCard } from './QuestionnairesCard';
import { RedFlagsCard } from './RedFlagsCard';
import { ReportPage } from './ReportPage';
import { RestrictionsCard } from './RestrictionsCard';
import { SettleLine } from './SettleLine';
import { TestsCard } from './TestsCard';
import { WhoCard } from './WhoCard';
import { WhoDidWhat } from './WhoDidWhat';
import '#features/sessions/screens/sessions.css';
import '#features/sessions/screens/setList.css';
import './patients.css';

/**
 * One patient, in the order of somebody with ten minutes: what needs a look, what to do next, the course, the plan and what
 * was done of it, the sessions; below, in groups, what is looked up now and then.
 */
export function PatientScreen() {
  const navigation = useNavigation();
  const patients = usePatients();
  const keptSessions = useKeptSessions();
  const id = useNavigationState((state) => state.about);
  const patient = usePatientsState((state) => state.patient);
  const isMissing = usePatientsState((state) => state.isMissing);
  const problem = usePatientsState((state) => state.problem);
  const readProblem = useKeptSessionsState((state) => state.problem);
  const pseudonym = patient?.pseudonym;
  useEffect(() => {
    if (id !== null) void patients.open(id);
  }, [patients, id]);
  useEffect(() => {
    if (pseudonym === undefined) return;
    void keptSessions.enter(pseudonym);
    return () => keptSessions.leave();
  }, [keptSessions, pseudonym]);
  return (
    <div className="patients patient">
      <header className="sessions-head">
        <Brand />
        <h1>{pseudonym ?? 'Patient'}</h1>
        {pseudonym !== undefined && <DeletePatient patient={pseudonym} />}
        <Button className="button button-quiet" onPress={() => navigation.returnTo('patients')}>
          All patients
        </Button>
      </header>
      <ProblemMessage problem={problem} onClose={() => patients.dismissProblem()} />
      <ProblemMessage problem={readProblem} onClose={() => keptSessions.dismissProblem()} />
      {(patient?.note ?? '') !== '' && <p className="message">{patient?.note}</p>}
      {isMissing || id === null ? (
        <p className="card patients-empty">
          This patient is not kept on this device, or was deleted. Choose one from the list of all patients.
        </p>
      ) : (
        patient !== null && <Page />
      )}
      <Removals />
    </div>
  );
}

function Page() {
  const body = useRef<HTMLDivElement>(null);
  const keptSessions = useKeptSessions();
  const all = useKeptSessionsState((state) => state.sessions);
  const removals = useKeptSessionsState((state) => state.removals);
  const selected = useKeptSessionsState((state) => state.selected);
  const repeats = usePatientsState((state) => state.repeats);
  const [isReport, setReport] = useState(false);
  // On a phone the list of sessions stands below what it opens.
  useEffect(() => {
    if (selected !== null || isReport) body.current?.scrollIntoView({ block: 'nearest' });
  }, [selected, isReport]);
  const sessions = useMemo(() => {
    const going = new Set(removals.flatMap(({ records }) => records.map(({ id }) => id)));
    return all?.filter(({ id }) => !going.has(id)) ?? [];
  }, [all, removals]);
  const plans = usePatientsState((state) => state.patient?.plans);
  const course = useMemo(() => buildCourse(sessions, plans ?? []), [sessions, plans]);
  const changes = useMemo(() => trackChanges(course, errorBetweenDays(repeats)), [course, repeats]);
  if (all === null) return <p className="soft">Reading the sessions …</p>;
  const session = sessions.find(({ id }) => id === selected);
  const isReportShown = isReport && session === undefined;
  return (
    <main className="patient-main">
      <PatientJumps
        isReportShown={isReportShown}
        onReport={() => {
          keptSessions.select(null);
          setReport(true);
        }}
        onPage={() =>
          flushSync(() => {
            keptSessions.select(null);
            setReport(false);
          })
        }
      />
      <div className="patient-body" ref={body}>
        {isReportShown ? (
          <ReportPage sessions={sessions} onClose={() => setReport(false)} />
        ) : session === undefined ? (
          <>
            <PatientNeeds sessions={sessions} />
            <OtherVersions />
            <ProgrammeCard sessions={sessions} />
            <CourseCard course={course} />
            <ChangeCard course={course} changes={changes} />
          </>
        ) : (
          <>
            <div className="button-row">
              <Button className="button" onPress={() => keptSessions.select(null)}>
                {isReport ? '‹ Back to the report' : '‹ Back to the course'}
              </Button>
              <SettleLine session={session} />
            </div>
            <SessionDetail key={session.id} session={session} />
          </>
        )}
      </div>
      <div className="patient-aside">
        <PlanCard sessions={sessions} />
        <AdherenceCard sessions={sessions} />
        <PatientSessions sessions={sessions} />
      </div>
      {!isReportShown && session === undefined && (
        <Below sessions={sessions} course={course} changes={changes} />
      )}
    </main>
  );
}

interface BelowProps {
  sessions: readonly ListedSession[];
  course: Course;
  changes: readonly TrackChange[];
}

/** What is looked up now and then, in named groups. */
function Below({ sessions, course, changes }: BelowProps) {
  return (
    <div className="patient-below">
      <PatientGroup id="group-tests" title="Tests and questionnaires">
        <TestsCard sessions={sessions} />
        <QuestionnairesCard />
        <CriteriaCard changes={changes} />
      </PatientGroup>
      <PatientGroup id="group-case" title="About the patient">
        <WhoCard />
        <RestrictionsCard />
        <RedFlagsCard />
      </PatientGroup>
      <PatientGroup id="group-measuring" title="Your own error and eye">
        <OwnErrorCard course={course} />
        <EyeCard sessions={sessions} />
      </PatientGroup>
      <PatientGroup id="group-documents" title="Documents and records">
        <HandOverCard />
        <WhoDidWhat sessions={sessions} />
      </PatientGroup>
    </div>
  );
}
