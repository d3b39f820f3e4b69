import { useState, type FormEvent } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import { isHolding } from '#documents/session/concernsOf';
import { longestText } from '#documents/session/sessionDocument';
import { dayWords } from '#words/dateWords';
import { message } from '#words/messages/message';
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
      title={message('last-time.title')}
      back={() => home.back()}
      actions={
        <>
          <Button className="button button-primary" onPress={() => home.sayUnseen()}>
            {message('last-time.not-yet')}
          </Button>
          <Button className="button" onPress={() => setIsCleared(true)}>
            {message('last-time.cleared')}
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
      <p className="flag-advice">{message('last-time.seen')}</p>
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
    <HomePage title={message('last-time.who')} back={onBack}>
      <p>{message('last-time.who.what')}</p>
      <div className="home-section">
        <Button className="button flag-button" onPress={() => home.sayCleared('my therapist')}>
          {message('last-time.therapist')}
        </Button>
        <Button className="button flag-button" onPress={() => home.sayCleared('my doctor')}>
          {message('last-time.doctor')}
        </Button>
      </div>
      <form className="home-section" onSubmit={say}>
        <TextField className="field" value={who} maxLength={longestText.who} onChange={setWho}>
          <Label>{message('last-time.other')}</Label>
          <Input className="text-input" />
        </TextField>
        <Button className="button" type="submit" isDisabled={who.trim() === ''}>
          {message('home.continue')}
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
  const advice = [...new Set(concerns.flatMap((concern) => concernAdvice(concern, cautionsOf(plan))))];
  const isHeld = concerns.some(isHolding);
  return (
    <HomePage
      title={message(isHeld ? 'last-time.have-seen' : 'last-time.tell-first')}
      actions={
        <>
          <Button className="button button-primary" onPress={() => home.leave()}>
            {message('last-time.end')}
          </Button>
          {!isHeld && (
            <Button className="button" onPress={() => home.goOnUnseen()}>
              {message('last-time.go-on')}
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
      <p>{message('last-time.again')}</p>
    </HomePage>
  );
}
