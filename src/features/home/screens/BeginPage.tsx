import { useState, type FormEvent } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { LanguageSwitch } from '#shell/language/LanguageSwitch';
import { PassphraseField } from '#ui/components/PassphraseField';
import { useFileDrop } from '#ui/components/useFileDrop';
import { message } from '#words/messages/message';
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
      title={message('begin.title')}
      back={isOther ? () => setIsOther(false) : undefined}
      leave={{ words: message('home.to-start'), onPress: () => home.leave() }}
      actions={
        latest === undefined ? (
          <PlanFile isPrimary isDisabled={isBlocked || isOpening} words={message('begin.open-plan')} />
        ) : (
          <Button
            className="button button-primary"
            isDisabled={isBlocked || isOpening}
            onPress={() => void home.openKeptPlan(latest.id)}
          >
            {message('begin.with-plan-of', { patient: latest.patient })}
          </Button>
        )
      }
    >
      <LanguageSwitch />
      {isSealed && <SealedPlan isDisabled={isBlocked || isOpening} />}
      <StorageNotice />
      <InterruptedSets />
      <BackgroundLine />
      <p>{message('begin.what')}</p>
      <section className="home-section">
        <h2>{message('begin.with-plan')}</h2>
        <p>{message('begin.plan-file')}</p>
        <div className="button-row">
          {older.map(({ id, patient }) => (
            <Button
              key={id}
              className="button"
              isDisabled={isBlocked || isOpening}
              onPress={() => void home.openKeptPlan(id)}
            >
              {message('begin.plan-of', { patient })}
            </Button>
          ))}
          {latest !== undefined && (
            <PlanFile isDisabled={isBlocked || isOpening} words={message('begin.another-plan')} />
          )}
          <Button
            className="button"
            isDisabled={isBlocked || isOpening}
            onPress={() => void home.openExamplePlan()}
          >
            {message('begin.invented-plan')}
          </Button>
        </div>
      </section>
      <section className="home-section">
        <h2>{message('begin.without-plan')}</h2>
        <p>{message('begin.without-plan.what')}</p>
        <div className="button-row">
          <Button className="button" isDisabled={isBlocked} onPress={() => setIsFree(true)}>
            {message('begin.record-without')}
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
      title={message('begin.title')}
      leave={{ words: message('home.to-start'), onPress: () => home.leave() }}
    >
      <p role="status" className="soft">
        {message('begin.looking')}
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
      <h2>{message('begin.sealed')}</h2>
      <form className="home-section" onSubmit={open}>
        <PassphraseField
          label={message('begin.passphrase')}
          hint={message('begin.passphrase.hint')}
          value={passphrase}
          onChange={setPassphrase}
          autoFocus
        />
        <Button className="button button-primary" type="submit" isDisabled={isDisabled || passphrase === ''}>
          {message('begin.open-sealed')}
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
