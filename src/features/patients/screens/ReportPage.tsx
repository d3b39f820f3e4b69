import { useEffect, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { WorstStill } from '#features/review/screens/WorstStill';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { Choice } from '#ui/components/Choice';
import { ErrorLine } from '#ui/components/ErrorLine';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { longMeasure } from '#words/formatMeasure';
import { english } from '#words/messages/english';
import { saidIn, type Catalogue } from '#words/messages/message';
import { usePatients, usePatientsState } from '../patientsContext';
import { errorBetweenDays } from '../rules/practiceRepeats';
import { patientReport } from '../rules/report/patientReport';
import { reportText, type Report } from '../rules/report/reportLine';
import { therapistReport } from '../rules/report/therapistReport';
import type { ReportStill, ReportStills } from '../store/readStills';
import './report.css';

const audiences = [
  { id: 'record', name: 'For the record and colleagues' },
  { id: 'en', name: 'For the patient, in English' },
  { id: 'es', name: 'For the patient, in Spanish' },
] as const;
type Audience = (typeof audiences)[number]['id'];

interface Props {
  sessions: readonly ListedSession[];
  onClose: () => void;
}

/** The patient's weeks on one page, to be pasted as text or printed. */
export function ReportPage({ sessions, onClose }: Props) {
  const [audience, setAudience] = useState<Audience>('record');
  const [spanish, setSpanish] = useState<Catalogue | null>(null);
  const [told, setTold] = useState<{ text: string; isProblem: boolean } | null>(null);
  const patient = usePatientsState((state) => state.patient)!;
  const plans = usePatientsState((state) => state.plans);
  const nowMs = usePatientsState((state) => state.readAtMs);
  const stages = usePatientsState((state) => state.stages);
  const repeats = usePatientsState((state) => state.repeats);
  const report = useMemo((): Report => {
    const reported = { patient, plans, sessions, nowMs, error: errorBetweenDays(repeats), stages };
    if (audience === 'record') return therapistReport(reported);
    if (audience === 'es' && spanish !== null) return saidIn('es', spanish, () => patientReport(reported));
    return saidIn('en', english, () => patientReport(reported));
  }, [audience, spanish, patient, plans, sessions, nowMs, repeats, stages]);
  const choose = async (next: Audience) => {
    setTold(null);
    try {
      if (next === 'es' && spanish === null) setSpanish((await import('#words/messages/spanish')).spanish);
      setAudience(next);
    } catch {
      setTold({
        text: 'Spanish could not be loaded. Check the connection, then try again.',
        isProblem: true,
      });
    }
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(reportText(report));
      setTold({ text: 'Copied. Paste it where it belongs.', isProblem: false });
    } catch {
      setTold({
        text: 'The browser did not let it be copied. Select the text below, and copy that.',
        isProblem: true,
      });
    }
  };
  return (
    <>
      <div className="button-row no-print report-tools">
        <Button className="button" onPress={onClose}>
          ‹ Back to the course
        </Button>
        <Choice
          label="Whom the report is for"
          isLabelHidden
          options={audiences}
          value={audience}
          onChange={(next) => void choose(next)}
        />
        <Button className="button button-primary" onPress={() => void copy()}>
          Copy as text
        </Button>
        <Button className="button" onPress={() => print()}>
          Print …
        </Button>
        <span role="status" className="small">
          {told !== null && !told.isProblem && told.text}
        </span>
        <ErrorLine sentence={told?.isProblem === true ? told.text : null} isSmall />
      </div>
      <article className="card report" lang={audience === 'es' ? 'es' : 'en'} aria-label="Report">
        <Lines report={report} />
        {audience === 'record' && <Stills sessions={sessions} />}
      </article>
    </>
  );
}

function Lines({ report: [title, ...lines] }: { report: Report }) {
  return (
    <>
      <h2>{title?.text}</h2>
      <dl>
        {lines.map(({ head, text }) => (
          <div key={head + text}>
            {head !== '' && <dt>{head}</dt>}
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

/** The least and the farthest inward repetition of the newest set with a video; nothing without one. */
function Stills({ sessions }: { sessions: readonly ListedSession[] }) {
  const patients = usePatients();
  const [stills, setStills] = useState<ReportStills | null>(null);
  useEffect(() => {
    let isCurrent = true;
    void patients.readStills(sessions).then((found) => {
      if (isCurrent) setStills(found);
    });
    return () => {
      isCurrent = false;
    };
  }, [patients, sessions]);
  if (stills === null) return null;
  const { recording, limits, startedAt, best, worst } = stills;
  const { task, side } = recording.measurement.setup;
  const figure = (name: string, { number, timeMs, deg, bandDeg }: ReportStill) => (
    <figure>
      <WorstStill recording={recording} limits={limits} timeMs={timeMs} />
      <figcaption className="small">
        {name}: repetition {number}, {longMeasure('knee-angle', { value: deg, band: bandDeg })}
      </figcaption>
    </figure>
  );
  return (
    <section aria-label="Stills" className="report-stills">
      <p className="small">
        {exerciseName(task)}, {side}, {dayWords(startedAt)}, the last set whose video is kept:
      </p>
      {figure('Least inward', best)}
      {figure('Farthest inward', worst)}
    </section>
  );
}
