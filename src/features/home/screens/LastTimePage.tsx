import { useState, type FormEvent } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import { isHolding } from '#documents/session/concernsOf';
import { longestText } from '#documents/session/sessionDocument';
import { dayWords } from '#words/dateWords';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { concernAdvice, concernWords } from './concernWords';
import { HomePage } from './HomePage';

/** What was said of the body the last time: asked again until a professional has cleared it. */
export function LastTimePage() {
  const home = useHome();
  const { earlier, isUnseen } = useHomeStep('last-time', (part) => part);
  const [isCleared, setIsCleared] = useState(false);
  if (isUnseen) return <NotSeen />;
  if (isCleared) return <Who onBack={() => setIsCleared(false)} />;
  return (
    <HomePage
      title="Last time you told us"
      leave={{ words: 'Back', onPress: () => home.back() }}
      actions={
        <>
          <Button className="button button-primary" onPress={() => home.sayUnseen()}>
            Not yet
          </Button>
          <Button className="button" onPress={() => setIsCleared(true)}>
            Yes, and I may exercise
          </Button>
        </>
      }
    >
      {earlier.map(({ id, startedAt, concerns }) => (
        <section key={id} className="home-section">
          <h2>{dayWords(startedAt)}</h2>
          <ul className="home-list">
            {concerns.map((concern) => (
              <li key={concern.kind}>{concernWords(concern)}</li>
            ))}
          </ul>
        </section>
      ))}
      <p className="flag-advice">Have you been seen about it by your therapist or doctor?</p>
    </HomePage>
  );
}

/** Who cleared it: kept with the day, for the therapist to see. */
function Who({ onBack }: { onBack: () => void }) {
  const home = useHome();
  const [who, setWho] = useState('');
  const say = (event: FormEvent) => {
    event.preventDefault();
    home.sayCleared(who);
  };
  return (
    <HomePage title="Who said that you may exercise?" leave={{ words: 'Back', onPress: onBack }}>
      <p>Your answer is kept with today’s date, and your therapist sees it.</p>
      <div className="home-section">
        <Button className="button flag-button" onPress={() => home.sayCleared('my therapist')}>
          My therapist
        </Button>
        <Button className="button flag-button" onPress={() => home.sayCleared('my doctor')}>
          My doctor
        </Button>
      </div>
      <form className="home-section" onSubmit={say}>
        <TextField className="field" value={who} maxLength={longestText.who} onChange={setWho}>
          <Label>Or another professional: who?</Label>
          <Input className="text-input" />
        </TextField>
        <Button className="button" type="submit" isDisabled={who.trim() === ''}>
          Continue
        </Button>
      </form>
    </HomePage>
  );
}

function NotSeen() {
  const home = useHome();
  const plan = useHomeState((state) => state.plan);
  const earlier = useHomeStep('last-time', (part) => part.earlier);
  const concerns = earlier.flatMap((session) => session.concerns);
  const advice = [...new Set(concerns.map((concern) => concernAdvice(concern, cautionsOf(plan))))];
  const isHeld = concerns.some(isHolding);
  return (
    <HomePage
      title={isHeld ? 'Please have it seen first' : 'Please tell them first'}
      actions={
        <>
          <Button className="button button-primary" onPress={() => home.leave()}>
            End here for today
          </Button>
          {!isHeld && (
            <Button className="button" onPress={() => home.goOnUnseen()}>
              Go on to the questions
            </Button>
          )}
        </>
      }
    >
      {advice.map((sentence) => (
        <p key={sentence} className="flag-advice">
          {sentence}
        </p>
      ))}
      <p>This program can’t tell what the cause is. We ask again the next time.</p>
    </HomePage>
  );
}
