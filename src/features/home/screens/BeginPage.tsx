import { useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { useFileDrop } from '#ui/components/useFileDrop';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { BackgroundLine } from './BackgroundLine';
import { FreePage } from './FreePage';
import { HomePage } from './HomePage';
import { InterruptedSets } from './InterruptedSets';
import { StorageNotice } from './StorageNotice';

/** The way in at home: by the plan, or without one. Interrupted sets are dealt with first. */
export function BeginPage() {
  const home = useHome();
  const plans = useHomeState((state) => state.plans);
  const isOpening = useHomeStep('plan', (part) => part.isOpening);
  const isBlocked = useHomeState(({ storage }) => storage.state === 'blocked' || storage.state === 'opening');
  const [isFree, setIsFree] = useState(false);
  useFileDrop((file) => void home.openPlanFile(file));
  if (isFree) return <FreePage onBack={() => setIsFree(false)} />;

  const [latest, ...older] = plans;
  return (
    <HomePage
      title="Record yourself at home"
      leave={{ words: 'Back to the start', onPress: () => home.leave() }}
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
