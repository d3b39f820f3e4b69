import { Button } from 'react-aria-components';

/** Headings of the page in its order, by their ids. */
const jumps = [
  ['course-title', 'Course'],
  ['patient-plan-title', 'Plan'],
  ['patient-sessions-title', 'Sessions'],
  ['group-tests', 'Tests and questionnaires'],
  ['group-case', 'About the patient'],
  ['group-measuring', 'Own error and eye'],
  ['group-documents', 'Documents and records'],
] as const;

interface Props {
  isReportShown: boolean;
  onReport: () => void;
  /** Puts the page itself in the place of a report or session, before it is jumped to. */
  onPage: () => void;
}

/** Jumps to a part of the page, and opens the report. */
export function PatientJumps({ isReportShown, onReport, onPage }: Props) {
  const jumpTo = (id: string) => {
    onPage();
    const heading = document.getElementById(id);
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  };
  return (
    <nav className="patient-jumps" aria-label="On this page">
      <Button className="button" onPress={onReport} aria-pressed={isReportShown}>
        Report
      </Button>
      {jumps.map(([id, title]) => (
        <Button key={id} className="button button-quiet" onPress={() => jumpTo(id)}>
          {title}
        </Button>
      ))}
    </nav>
  );
}
