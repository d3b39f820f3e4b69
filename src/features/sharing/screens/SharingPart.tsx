import { useState } from 'react';
import { Button, Input, Label, Text, TextField } from 'react-aria-components';
import type { SharedScope } from '#documents/practice/sharedHead';
import { useNavigation } from '#shell/navigation/navigationContext';
import { Choice } from '#ui/components/Choice';
import { ErrorLine } from '#ui/components/ErrorLine';
import { PassphraseField } from '#ui/components/PassphraseField';
import { momentWords } from '#words/dateWords';
import { useSharing, useSharingState } from '../sharingContext';
import type { SharingState } from '../store/replica/createSharing';
import { refusalWords } from '../store/replica/refusal';

/** Sharing within the practice through a server: off unless somebody starts it. */
export function SharingPart() {
  const sharing = useSharing();
  const state = useSharingState((now) => now.state);
  const settings = useSharingState((now) => now.settings);
  const sentence = useSharingState((now) => now.sentence);
  const allowed = useSharingState((now) => now.allowed);
  const isOn = settings.isOn && state !== 'off' && state !== 'stopped';
  const namesServer = allowed.length > 1;
  return (
    <section className="practice-part" aria-label="Sharing within the practice">
      <h3>Sharing within the practice</h3>
      {isOn ? (
        <>
          <p>
            With {settings.address}: {scopes.find(({ id }) => id === settings.scope)!.name.toLowerCase()}.
          </p>
          <SharingStatus />
          <div className="button-row">
            {(state === 'up-to-date' || state === 'waiting') && (
              <Button className="button" onPress={() => sharing.exchange()}>
                Exchange now
              </Button>
            )}
            <Button className="button button-quiet" onPress={() => void sharing.stop()}>
              Stop sharing
            </Button>
          </div>
        </>
      ) : (
        <>
          <p className="small soft">
            Off. With a server of your practice, the devices of the colleagues above keep the same library,
            patients, plans and sessions. Everything is sealed on this device for those colleagues; the server
            sees how much and when, and can read none of it.
          </p>
          {namesServer ? <SharingForm /> : <WithoutServer />}
        </>
      )}
      <ErrorLine sentence={state === 'waiting' ? null : sentence} />
      <Namesakes isOn={isOn} />
      <Refusals />
    </section>
  );
}

/** Where the build of the program names no server, it may connect to nothing but where its pages come from. */
function WithoutServer() {
  const settings = useSharingState((now) => now.settings);
  const [isOpen] = useState(settings.address !== ''); // Who shared before finds it again.
  return (
    <>
      <p>
        This build of the program names no server. To share through one of the practice’s own, the person who
        hosts the program has to build it again; docs/deploy.md, which comes with the source, says how.
      </p>
      <details open={isOpen}>
        <summary>The server of this page has the practice’s database as well</summary>
        <div className="practice-part">
          <SharingForm />
        </div>
      </details>
    </>
  );
}

function SharingForm() {
  const sharing = useSharing();
  const settings = useSharingState((now) => now.settings);
  const allowed = useSharingState((now) => now.allowed);
  const namesServer = allowed.length > 1;
  const [address, setAddress] = useState(settings.address || (namesServer ? `${allowed[0]}/` : ''));
  const [user, setUser] = useState(settings.user);
  const [password, setPassword] = useState(settings.password);
  const [scope, setScope] = useState(settings.scope);
  return (
    <>
      <TextField className="field" value={address} onChange={setAddress} type="url">
        <Label className="field-label">Address of the practice’s database</Label>
        <Input
          className="text-input"
          autoComplete="off"
          spellCheck={false}
          placeholder={`${allowed[0]}/practice-1`}
        />
        <Text slot="description" className="small soft">
          This build of the program may connect to {allowed.join(' and ')} only; for another server it has to
          be built again.
        </Text>
      </TextField>
      <TextField className="field" value={user} onChange={setUser}>
        <Label className="field-label">User</Label>
        <Input className="text-input" autoComplete="off" spellCheck={false} />
      </TextField>
      <PassphraseField label="Password" value={password} onChange={setPassword} />
      <Choice label="What is shared" options={scopes} value={scope} onChange={setScope} />
      <Button
        className="button"
        isDisabled={address.trim() === ''}
        onPress={() => void sharing.start({ address, user, password, scope })}
      >
        Start sharing
      </Button>
    </>
  );
}

const scopes = [
  { id: 'records', name: 'Patients, plans and sessions', hint: 'Little: some kilobytes a session' },
  { id: 'recordings', name: 'Recordings as well', hint: 'Some hundred kilobytes a set' },
  { id: 'videos', name: 'Recordings with their videos', hint: 'Megabytes a set, twice on each device' },
] satisfies { id: SharedScope; name: string; hint: string }[];

function SharingStatus() {
  const state = useSharingState((now) => now.state);
  const sentence = useSharingState((now) => now.sentence);
  const lastAt = useSharingState((now) => now.lastAt);
  return (
    <p role="status">
      {statusWords[state]}
      {state === 'waiting' && sentence !== null && ` ${sentence}`}
      {lastAt !== null && state !== 'exchanging' && ` Last exchanged: ${momentWords(lastAt)}.`}
    </p>
  );
}

const statusWords: Record<SharingState['state'], string> = {
  off: 'Off.',
  stopped: 'Stopped.',
  elsewhere: 'Another tab of this program does it.',
  exchanging: 'Exchanging …',
  'up-to-date': 'Up to date.',
  waiting: 'Waiting.',
};

/** Patients of colleagues whose pseudonym is used here for somebody else, as far as is known. */
function Namesakes({ isOn }: { isOn: boolean }) {
  const sharing = useSharing();
  const navigation = useNavigation();
  const namesakes = useSharingState((now) => now.namesakes);
  const [asked, setAsked] = useState<string | null>(null);
  if (namesakes.length === 0) return null;
  return (
    <>
      <p>Not taken in, since the pseudonym is used here already:</p>
      <ul className="practice-list" aria-label="Pseudonyms that are used twice">
        {namesakes.map((one) => (
          <li key={one.patientId} className="practice-part">
            <p>
              <strong>{one.pseudonym}</strong> from {one.by}.{' '}
              {one.isDemoHere ? 'Here that is an invented patient, who can be deleted: ' : 'Here that is '}
              <Button
                className="link-button"
                onPress={() => void navigation.show('patient', false, one.hereId)}
              >
                {one.pseudonym} on this device
              </Button>
              {one.isDemoHere ? '.' : ', with no plan or looked-at session in common.'}
            </p>
            {asked === one.patientId ? (
              <>
                <p>
                  Both records become one, on all devices of the practice. All entries, plans and sessions of
                  both stay; where both noted something else, the later counts and the other stays beside it.
                  It can’t be undone.
                </p>
                <div className="button-row">
                  <Button
                    className="button"
                    onPress={() => {
                      setAsked(null);
                      void sharing.mergeNamesake(one);
                    }}
                  >
                    They are one person
                  </Button>
                  <Button className="button button-quiet" onPress={() => setAsked(null)}>
                    Leave it
                  </Button>
                </div>
              </>
            ) : (
              <>
                <p className="small soft">
                  If they are two people, each stays on its own device until one of you enters theirs under
                  another pseudonym and deletes it under this one. The other is then taken in by itself.
                </p>
                {isOn && !one.isDemoHere && (
                  <Button className="button button-quiet" onPress={() => setAsked(one.patientId)}>
                    It is the same person …
                  </Button>
                )}
              </>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

/** What else was refused, and who was taken out elsewhere. */
function Refusals() {
  const refused = useSharingState((now) => now.refused);
  const outElsewhere = useSharingState((now) => now.outElsewhere);
  const outOf = useSharingState((now) => now.outOf);
  return (
    <>
      {refused.length > 0 && (
        <>
          <p>Not taken in from the server:</p>
          <ul aria-label="Not taken in from the server">
            {refused.map(({ reason, count }) => (
              <li key={reason}>
                {refusalWords[reason].what}: {count}. {refusalWords[reason].then}
              </li>
            ))}
          </ul>
        </>
      )}
      {outElsewhere.map(({ initials, by }) => (
        <p key={initials}>
          {by} took {initials} out of the practice. Nothing new is sealed for {initials}; take {initials} out
          above as well.
        </p>
      ))}
      {outOf.length > 0 && (
        <p className="field-error">
          {outOf.join(' and ')} took you out of the practice: nothing new is sealed for this device.
        </p>
      )}
    </>
  );
}
