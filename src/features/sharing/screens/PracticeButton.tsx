import { useState } from 'react';
import { Button, FileTrigger, Input, Label, TextArea, TextField } from 'react-aria-components';
import { keyCardOf } from '#documents/practice/keyCard';
import { longestText } from '#documents/session/sessionDocument';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { KeyWords } from '#ui/components/KeyWords';
import { QrCode } from '#ui/components/QrCode';
import { useClinic, useClinicState } from '../clinicContext';
import { usePeople, usePeopleState } from '../peopleContext';
import { ScanKey } from './ScanKey';
import { SharingPart } from './SharingPart';
import './practice.css';

/** Who works in the practice: own initials and key for colleagues, and theirs. */
export function PracticeButton() {
  return (
    <HeadDialog name="Practice" title="The practice’s people">
      <p className="small soft">
        Colleagues whose keys are here can be chosen when you write a plan: what the patient sends back then
        opens on their devices too. The list stays on this device.
      </p>
      <OwnCard />
      <Colleagues />
      <AddColleague />
      <SharingPart />
    </HeadDialog>
  );
}

/** What colleagues need of this device: its key with the own initials. */
function OwnCard() {
  const clinic = useClinic();
  const people = usePeople();
  const key = useClinicState((state) => state.recipient);
  const keySentence = useClinicState((state) => state.sentence);
  const initials = usePeopleState((state) => state.initials);
  const [typed, setTyped] = useState(initials);
  return (
    <section className="practice-part">
      <h3>My key</h3>
      <TextField
        className="field"
        value={typed}
        maxLength={longestText.who}
        onChange={setTyped}
        onBlur={() => void people.setInitials(typed)}
      >
        <Label className="field-label">Your initials</Label>
        <Input className="text-input" />
      </TextField>
      {key === null ? (
        <>
          <Button className="button" onPress={() => void clinic.makeKey()}>
            Make a key
          </Button>
          <ErrorLine sentence={keySentence} />
        </>
      ) : initials === '' ? (
        <p className="soft">Enter your initials. Your key then appears here for your colleagues.</p>
      ) : (
        <>
          <p>
            Its words: <KeyWords of={key} />. Your colleague compares them before adding it. It only seals; it
            opens nothing.
          </p>
          <QrCode text={keyCardOf({ initials, key })} label="My key as a code" />
          <p className="small soft key-card">{keyCardOf({ initials, key })}</p>
          <Button className="button" onPress={() => people.saveCard(key)}>
            Save my key as a file
          </Button>
        </>
      )}
    </section>
  );
}

function Colleagues() {
  const people = usePeople();
  const colleagues = usePeopleState((state) => state.colleagues);
  const [asked, setAsked] = useState<string | null>(null);
  return (
    <section className="practice-part">
      <h3>Colleagues</h3>
      {colleagues.length === 0 && <p className="soft">Nobody yet.</p>}
      <ul className="practice-list" aria-label="Colleagues">
        {colleagues.map(({ initials, key }) => (
          <li key={key}>
            <span>
              <strong>{initials}</strong>: <KeyWords of={key} />
            </span>
            {asked === key ? (
              <>
                <p>
                  New plans no longer go to {initials}. Plans that patients have already keep this key: what
                  they send by those still opens for {initials}, until each patient has a new plan.
                </p>
                <div className="button-row">
                  <Button className="button" onPress={() => void people.takeOut(key)}>
                    Take {initials} out
                  </Button>
                  <Button className="button button-quiet" onPress={() => setAsked(null)}>
                    Leave it
                  </Button>
                </div>
              </>
            ) : (
              <Button className="button button-quiet" onPress={() => setAsked(key)}>
                Take out …
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** A colleague's key from a file or pasted, with its words to compare. */
function AddColleague() {
  const people = usePeople();
  const compared = usePeopleState((state) => state.compared);
  const colleagues = usePeopleState((state) => state.colleagues);
  const sentence = usePeopleState((state) => state.sentence);
  const [card, setCard] = useState('');
  const [isScanning, setScanning] = useState(false);
  const replaced = colleagues.find(({ initials }) => initials === compared?.initials);
  const add = () => {
    setCard('');
    void people.add();
  };
  return (
    <section className="practice-part">
      <h3>Add a colleague</h3>
      {isScanning ? (
        <ScanKey
          onRead={(text) => {
            setScanning(false);
            void people.compare(text);
          }}
          onClose={() => setScanning(false)}
        />
      ) : compared === null ? (
        <>
          <p className="small soft">
            Your colleague opens “Practice” on their device. Read the code there with this device’s camera,
            open the file that they saved, or paste the line below the code.
          </p>
          <Button
            className="button"
            onPress={() => {
              people.dismiss();
              setScanning(true);
            }}
          >
            Read the code with the camera
          </Button>
          <TextField className="field" value={card} onChange={setCard}>
            <Label className="field-label">Your colleague’s key</Label>
            <TextArea className="text-input" rows={3} />
          </TextField>
          <div className="button-row">
            <Button
              className="button"
              isDisabled={card.trim() === ''}
              onPress={() => void people.compare(card)}
            >
              Check it
            </Button>
            <FileTrigger
              acceptedFileTypes={['.txt']}
              onSelect={(files) => {
                const file = files?.[0];
                if (file !== undefined) void people.compare(file);
              }}
            >
              <Button className="button">Open a key file</Button>
            </FileTrigger>
          </div>
        </>
      ) : (
        <>
          <p>
            {compared.initials}: <KeyWords of={compared.key} />
          </p>
          <p>
            Ask {compared.initials} for the words on their screen, by voice. Add the key only if all five are
            the same: anyone who holds it can open what patients send.
          </p>
          {replaced !== undefined && (
            <p className="field-error">
              {compared.initials} is here with another key: <KeyWords of={replaced.key} />. It is taken out,
              and plans that patients have already keep it.
            </p>
          )}
          <div className="button-row">
            <Button className="button button-primary" onPress={add}>
              The words are the same: add {compared.initials}
            </Button>
            <Button className="button button-quiet" onPress={() => people.dismiss()}>
              They differ
            </Button>
          </div>
        </>
      )}
      <ErrorLine sentence={sentence} />
    </section>
  );
}
