import { Header, ListBox, ListBoxItem, ListBoxSection, Text } from 'react-aria-components';
import { findNeeds } from '../rules/findNeeds';
import { shortFinding } from '../rules/findingWords';
import { groupByPatient } from '../rules/groupByPatient';
import type { InboxVisit } from '../rules/inboxVisit';
import { patientName, setCount, visitTime } from './visitWords';

interface Props {
  visits: readonly InboxVisit[];
  selected: string | null;
  onSelect: (id: string) => void;
}

/** Visits by patient, each with what needs a look; up and down moves from one to the next. */
export function VisitList({ visits, selected, onSelect }: Props) {
  return (
    <ListBox
      className="inbox-list"
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
      {groupByPatient(visits).map(({ patient, visits: theirs }) => (
        <ListBoxSection key={patient} id={`patient ${patient}`}>
          <Header className="inbox-patient">{patientName(patient)}</Header>
          {theirs.map((visit) => (
            <ListBoxItem
              key={visit.id}
              id={visit.id}
              className="inbox-item"
              textValue={`${patientName(patient)}, ${visitTime(visit)}`}
            >
              <Text slot="label" className="inbox-item-head">
                <strong className="number">{visitTime(visit)}</strong>
                <span className="soft small">{setCount(visit)}</span>
              </Text>
              <Text slot="description" className="inbox-item-needs small">
                <Needs visit={visit} />
              </Text>
            </ListBoxItem>
          ))}
        </ListBoxSection>
      ))}
    </ListBox>
  );
}

function Needs({ visit }: { visit: InboxVisit }) {
  const needs = findNeeds(visit);
  const isReading = visit.sets.some(({ reading }) => reading.state === 'reading');
  return (
    <>
      {needs.map((finding) => (
        <span key={finding.kind} className={`inbox-need inbox-need-${finding.kind}`}>
          {shortFinding(finding)}
        </span>
      ))}
      {isReading && <span className="soft">reading the sets …</span>}
      {!isReading && needs.length === 0 && <span className="soft">nothing stands out</span>}
    </>
  );
}
