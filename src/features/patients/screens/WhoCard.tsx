import { useState } from 'react';
import { Button, Dialog, Heading } from 'react-aria-components';
import type { AlsoNoted, PatientNotes } from '#documents/patient/patientDocument';
import { DialogBox } from '#ui/components/DialogBox';
import { capitalised } from '#words/capitalised';
import { dateInWords, dayWords } from '#words/dateWords';
import { usePatients, usePatientsState } from '../patientsContext';
import { isPutAway, noteName } from '../rules/alsoNoted';
import { onsetWords, sideWords, siteWords } from '../rules/patientWords';
import { NotesForm } from './NotesForm';

/** Who it is, and what was agreed. */
export function WhoCard() {
  const patients = usePatients();
  const patient = usePatientsState((state) => state.patient)!;
  const [isOpen, setOpen] = useState(false);
  const save = (notes: PatientNotes) => {
    setOpen(false);
    void patients.saveNotes(notes);
  };
  return (
    <section className="card patient-who" aria-labelledby="patient-who-title">
      <div className="patient-card-head">
        <h3 id="patient-who-title">Who</h3>
        <Button className="button button-quiet" onPress={() => setOpen(true)}>
          Change …
        </Button>
      </div>
      <Facts notes={patient} />
      <AlsoNotes />
      <DialogBox isOpen={isOpen} onOpenChange={setOpen} isDismissable>
        <Dialog className="dialog patient-dialog">
          <Heading slot="title">{patient.pseudonym}</Heading>
          <NotesForm notes={patient} onSave={save} onCancel={() => setOpen(false)} />
        </Dialog>
      </DialogBox>
    </section>
  );
}

/** What a colleague noted otherwise; what is put away stays in the record, and can be had back. */
function AlsoNotes() {
  const patients = usePatients();
  const notes = usePatientsState((state) => state.patient?.alsoNoted) ?? [];
  const log = usePatientsState((state) => state.log);
  const known = notes.map((note) => ({ ...note, isPutAway: isPutAway(note, log) }));
  const putAway = known.filter((note) => note.isPutAway);
  const note = (what: 'note-put-away' | 'note-put-back', about: AlsoNoted) =>
    void patients.sign({ what, about: noteName(about) });
  return (
    <>
      {known
        .filter((one) => !one.isPutAway)
        .map((one) => (
          <div key={noteName(one)} role="note">
            <p className="small">
              Also, as {one.by} noted it on {dayWords(one.at)}:
            </p>
            <Facts notes={one.notes} />
            <Button className="link-button" onPress={() => note('note-put-away', one)}>
              Put away
            </Button>
          </div>
        ))}
      {putAway.length > 0 && (
        <ul className="small soft" aria-label="Put away">
          {putAway.map((one) => (
            <li key={noteName(one)}>
              What {one.by} noted on {dayWords(one.at)} is put away.{' '}
              <Button className="link-button" onPress={() => note('note-put-back', one)}>
                Show it again
              </Button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function Facts({ notes }: { notes: AlsoNoted['notes'] }) {
  const { painfulSide = null, since = null, onset = null, sites = [], goals = '' } = notes;
  const { painRule = null, restrictions = '', surgery = null } = notes;
  const facts: [name: string, value: string][] = [];
  if (painfulSide !== null || sites.length > 0) {
    const where = [
      painfulSide === null ? '' : sideWords[painfulSide],
      ...sites.map((site) => siteWords[site]),
    ];
    facts.push(['Hurts', where.filter((word) => word !== '').join(', ')]);
  }
  const began = [
    since === null ? '' : `since ${dateInWords(since)}`,
    onset === null ? '' : onsetWords[onset],
  ];
  if (since !== null || onset !== null)
    facts.push(['Began', capitalised(began.filter((word) => word !== '').join(', '))]);
  if (surgery !== null)
    facts.push(['Surgery', `${surgery.what}, ${surgery.side} knee, ${dateInWords(surgery.on)}`]);
  if (painRule !== null)
    facts.push([
      'Pain agreed',
      `up to ${painRule.limit} of 10${painRule.then === '' ? '' : `; above: ${painRule.then}`}`,
    ]);
  if (restrictions !== '') facts.push(['Restrictions', restrictions]);
  if (goals !== '') facts.push(['Goals', goals]);
  if (facts.length === 0)
    return <p className="soft">Nothing is noted yet: side, since when, what was agreed.</p>;
  return (
    <dl className="patient-facts">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt className="small soft">{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
