import { Header, ListBox, ListBoxItem, ListBoxSection, Text } from 'react-aria-components';
import { momentWords } from '#words/dateWords';
import { shortFinding } from '../rules/findingWords';
import { findNeeds } from '../rules/findNeeds';
import { groupByPatient } from '../rules/groupByPatient';
import type { ListedSession } from '../rules/listedSession';
import { countedSets, patientName } from './sessionWords';

interface Props {
  sessions: readonly ListedSession[];
  selected: string | null;
  onSelect: (id: string) => void;
}

/** Sessions by patient, each with what needs a look; the up and down keys move between them. */
export function SessionList({ sessions, selected, onSelect }: Props) {
  return (
    <ListBox
      className="sessions-list"
      aria-label="Kept sessions by patient"
      selectionMode="single"
      selectionBehavior="replace"
      selectedKeys={selected === null ? [] : [selected]}
      onSelectionChange={(keys) => {
        const [key] = keys === 'all' ? [] : [...keys];
        if (typeof key === 'string') onSelect(key);
      }}
      autoFocus
    >
      {groupByPatient(sessions).map(({ patient, sessions: theirs }) => (
        <ListBoxSection key={patient} id={`patient ${patient}`}>
          <Header className="sessions-patient">{patientName(patient)}</Header>
          {theirs.map((session) => (
            <ListBoxItem
              key={session.id}
              id={session.id}
              className="sessions-item"
              textValue={`${patientName(patient)}, ${momentWords(session.startedAt)}`}
            >
              <Text slot="label" className="sessions-item-head">
                <strong className="number">{momentWords(session.startedAt)}</strong>
                <span className="soft small">{countedSets(session)}</span>
              </Text>
              <Text slot="description" className="sessions-item-needs small">
                <Needs session={session} />
              </Text>
            </ListBoxItem>
          ))}
        </ListBoxSection>
      ))}
    </ListBox>
  );
}

function Needs({ session }: { session: ListedSession }) {
  const needs = findNeeds(session);
  const isReading = session.sets.some(({ reading }) => reading.state === 'reading');
  return (
    <>
      {needs.map((finding) => (
        <span key={finding.kind} className={`sessions-need sessions-need-${finding.kind}`}>
          {shortFinding(finding)}
        </span>
      ))}
      {isReading && <span className="soft">reading the sets …</span>}
      {!isReading && needs.length === 0 && <span className="soft">nothing stands out</span>}
    </>
  );
}
