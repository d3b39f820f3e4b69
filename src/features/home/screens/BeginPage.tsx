import { useState, type FormEvent } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { PassphraseField } from '#ui/components/PassphraseField';
import { useFileDrop } from '#ui/components/useFileDrop';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { BackgroundLine } from './BackgroundLine';
import { FreePage } from './FreePage';
import { HomePage } from './HomePage';
import { InterruptedSets } from './InterruptedSets';
import { StorageNotice } from './StorageNotice';
import { TodayPage } from './TodayPage';

/** The way in at home: by the plan, or without one. Interrupted sets are dealt with first. */
export function BeginPage() {
  const home = useHome();
  const plans = useHomeState((state) => state.plans);
  const isOpening = useHomeStep('plan', (part) => part.isOpening);
  const isSealed = useHomeStep('plan', (part) => part.isSealed);
  const isBlocked = useHomeState(({ storage }) => storage.state === 'blocked' || storage.state === 'opening');
  const [isFree, setIsFree] = useState(false);
  const [isOther, setIsOther] = useState(false);
  useFileDrop((file) => void home.openPlanFile(file));
  if (isFree) return <FreePage onBack={() => setIsFree(false)} />;

  if (plans === null && !isSealed) return <OpeningPage />;

  const [latest, ...older] = plans ?? [];
  if (latest !== undefined && !isOther && !isSealed)
    return <TodayPage plan={latest} onOther={() => setIsOther(true)} />;
  return (
    <HomePage
      title="Record yourself at home"
      leave={
        isOther
          ? { words: 'Back to today', onPress: () => setIsOther(false) }
          : { words: 'Back to the start', onPress: () => home.leave() }
      }
      actions={
        latest === undefined ? (
          <PlanFile isPrimary isDisabled={isBlocked || isOpening} words="Open my plan" />
        ) : (
          <Button
            className="button button-primary"
            isDisabled={isBlocked || isOpening}
            onPress={() => void home.openKeptPlan(latest.id)}
          >
            Continue with the plan for {latest.patient}
          </Button>
        )
      }
    >
      {isSealed && <SealedPlan isDisabled={isBlocked || isOpening} />}
      <StorageNotice />
      <InterruptedSets />
      <BackgroundLine />
      <p>
        Your phone or laptop films you from two to three metres, tells you where to stand, counts along, and
        shows afterwards how your knee moved. You do not have to touch it while you exercise.
      </p>
      <section className="home-section">
        <h2>With a plan</h2>
        <p>Your therapist gave you a file: it says what to do. It stays on this device.</p>
        <div className="button-row">
          {older.map(({ id, patient }) => (
            <Button
              key={id}
              className="button"
              isDisabled={isBlocked || isOpening}
              onPress={() => void home.openKeptPlan(id)}
            >
              Plan for {patient}
            </Button>
          ))}
          {latest !== undefined && <PlanFile isDisabled={isBlocked || isOpening} words="Open another plan" />}
          <Button
            className="button"
            isDisabled={isBlocked || isOpening}
            onPress={() => void home.openExamplePlan()}
          >
            Try an invented plan
          </Button>
        </div>
      </section>
      <section className="home-section">
        <h2>Without a plan</h2>
        <p>You choose the exercise, the leg, and how often.</p>
        <div className="button-row">
          <Button className="button" isDisabled={isBlocked} onPress={() => setIsFree(true)}>
            Record without a plan
          </Button>
        </div>
      </section>
    </HomePage>
  );
}

/** What is kept here decides what is shown first. */
function OpeningPage() {
  const home = useHome();
  return (
    <HomePage
      title="Record yourself at home"
      leave={{ words: 'Back to the start', onPress: () => home.leave() }}
    >
      <p role="status" className="soft">
        Looking for your plan …
      </p>
    </HomePage>
  );
}

/** Asks for the passphrase of a link. */
function SealedPlan({ isDisabled }: { isDisabled: boolean }) {
  const home = useHome();
  const [passphrase, setPassphrase] = useState('');
  const open = (event: FormEvent) => {
    event.preventDefault();
    void home.openSealedPlan(passphrase);
  };
  return (
    <section className="card home-section">
      <h2>This plan needs its passphrase</h2>
      <form className="home-section" onSubmit={open}>
        <PassphraseField
          label="Passphrase of the plan"
          hint="Your therapist told it to you."
          value={passphrase}
          onChange={setPassphrase}
          autoFocus
        />
        <Button className="button button-primary" type="submit" isDisabled={isDisabled || passphrase === ''}>
          Open the plan
        </Button>
      </form>
    </section>
  );
}

function PlanFile(props: { words: string; isDisabled: boolean; isPrimary?: boolean }) {
  const home = useHome();
  return (
    <FileTrigger
      acceptedFileTypes={['.json', 'application/json']}
      onSelect={(files) => {
        const file = files?.[0];
        if (file !== undefined) void home.openPlanFile(file);
      }}
    >
      <Button className={props.isPrimary ? 'button button-primary' : 'button'} isDisabled={props.isDisabled}>
        {props.words}
      </Button>
    </FileTrigger>
  );
}
