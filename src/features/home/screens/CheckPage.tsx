import { Button } from 'react-aria-components';
import { newSigns } from '#core/safety/newSigns';
import { findSign, redFlags } from '#core/safety/redFlags';
import { capitalised } from '#words/capitalised';
import { useHome, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';

/** The warning signs: all of them the first time, later three short questions. Where one applies, the way on is closed. */
export function CheckPage() {
  const asked = useHomeStep('check', (part) => part.asked);
  const hasSign = useHomeStep('check', ({ sign }) => sign !== null);
  if (hasSign) return <Chosen />;
  return asked === 'all' ? <AllSigns /> : <NewSigns />;
}

function AllSigns() {
  const home = useHome();
  return (
    <HomePage title="Does one of these apply to you?" leave={{ words: 'Back', onPress: () => home.back() }}>
      <p>
        Then do not exercise, and contact a professional. Read them all; next time there are fewer questions.
      </p>
      <div className="home-section">
        {redFlags.map(({ id, words }) => (
          <Button key={id} className="button flag-button" onPress={() => home.setSign(id)}>
            {capitalised(words)}
          </Button>
        ))}
      </div>
      <section className="home-section home-end">
        <Button className="button button-primary" onPress={() => home.noneOfThese()}>
          None of these
        </Button>
      </section>
    </HomePage>
  );
}

function NewSigns() {
  const home = useHome();
  return (
    <HomePage
      title="Anything new?"
      leave={{ words: 'Back', onPress: () => home.back() }}
      actions={
        <Button className="button button-primary" onPress={() => home.noneOfThese()}>
          Nothing new
        </Button>
      }
    >
      {newSigns.map(({ question, signs }) => (
        <section key={question} className="home-section">
          <h2>{question}</h2>
          <div className="sign-grid" role="group" aria-label={question}>
            {signs.map(({ id, words }) => (
              <Button key={id} className="button flag-button" onPress={() => home.setSign(id)}>
                {words}
              </Button>
            ))}
          </div>
        </section>
      ))}
      <Button className="button button-quiet" onPress={() => home.askAllSigns()}>
        Whole list
      </Button>
    </HomePage>
  );
}

function Chosen() {
  const home = useHome();
  const sign = useHomeStep('check', (part) => part.sign);
  if (sign === null) return null;
  const { words, advice } = findSign(sign);
  return (
    <HomePage
      title="Do not exercise today"
      actions={
        <>
          <Button className="button button-primary" onPress={() => home.stopBeforeStart()}>
            End here
          </Button>
          <Button className="button" onPress={() => home.setSign(null)}>
            That was a mistake
          </Button>
        </>
      }
    >
      <p>You chose: {words}.</p>
      <p className="flag-advice">{advice}</p>
      <p>This program can’t tell what the cause is. Please have it checked by someone who can.</p>
    </HomePage>
  );
}
