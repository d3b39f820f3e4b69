import { Button, ToggleButton } from 'react-aria-components';
import { newSigns } from '#core/safety/newSigns';
import { redFlags } from '#core/safety/redFlags';
import { capitalised } from '#words/capitalised';
import { message } from '#words/messages/message';
import { signAdvice, signWords } from '#words/signWords';
import { useHome, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';
import { NothingNew } from './NothingNew';

/** The warning signs: all of them the first time, later three short questions. Where one applies, the way on is closed. */
export function CheckPage() {
  const asked = useHomeStep('check', (part) => part.asked);
  const hasSign = useHomeStep('check', ({ sign }) => sign !== null);
  if (hasSign) return <Chosen />;
  return asked === 'all' ? <AllSigns /> : <NewSigns />;
}

function AllSigns() {
  const home = useHome();
  const isAskedAfter = useHomeStep('check', ({ askedAfter }) => askedAfter !== null);
  return (
    <HomePage title={message('check.title')} back={() => home.back()}>
      <p>{message('check.then')}</p>
      <div className="home-section">
        {redFlags.map(({ id }) => (
          <Button key={id} className="button flag-button" onPress={() => home.setSign(id)}>
            {capitalised(signWords(id))}
          </Button>
        ))}
      </div>
      <section className="home-section home-end">
        {isAskedAfter ? (
          <NothingNew words={message('check.none')} />
        ) : (
          <Button className="button button-primary" onPress={() => home.noneOfThese()}>
            {message('check.none')}
          </Button>
        )}
      </section>
    </HomePage>
  );
}

function NewSigns() {
  const home = useHome();
  const isAskedAfter = useHomeStep('check', ({ askedAfter }) => askedAfter !== null);
  return (
    <HomePage
      title={message('check.new')}
      back={() => home.back()}
      actions={
        isAskedAfter ? undefined : (
          <Button className="button button-primary" onPress={() => home.noneOfThese()}>
            {message('check.nothing-new')}
          </Button>
        )
      }
    >
      {newSigns.map(({ ask, signs }) => (
        <section key={ask} className="home-section">
          <h2>{message(`new.ask.${ask}`)}</h2>
          <div className="sign-grid" data-ask={ask} role="group" aria-label={message(`new.ask.${ask}`)}>
            {ask === 'swelling' && isAskedAfter && <LessSwollen />}
            {signs.map((id) => (
              <Button key={id} className="button flag-button" onPress={() => home.setSign(id)}>
                {message(`new.${id}`)}
              </Button>
            ))}
          </div>
        </section>
      ))}
      <Button className="button button-quiet" onPress={() => home.askAllSigns()}>
        {message('check.whole-list')}
      </Button>
      {/* Below the signs, never over them: they are read first. */}
      {isAskedAfter && <NothingNew words={message('check.nothing-new')} />}
    </HomePage>
  );
}

/** No sign: it is noted, and nothing else. */
function LessSwollen() {
  const home = useHome();
  const isLess = useHomeStep('check', ({ isLessSwollen }) => isLessSwollen);
  return (
    <ToggleButton
      className="button flag-button"
      isSelected={isLess}
      onChange={(is) => home.setLessSwollen(is)}
    >
      {message('new.less-swollen')}
    </ToggleButton>
  );
}

function Chosen() {
  const home = useHome();
  const sign = useHomeStep('check', (part) => part.sign);
  if (sign === null) return null;
  return (
    <HomePage
      title={message('check.do-not')}
      actions={
        <>
          <Button className="button button-primary" onPress={() => home.stopBeforeStart()}>
            {message('check.end')}
          </Button>
          <Button className="button" onPress={() => home.setSign(null)}>
            {message('check.mistake')}
          </Button>
        </>
      }
    >
      <p>{message('check.chosen', { sign: signWords(sign) })}</p>
      <p className="flag-advice">{signAdvice(sign)}</p>
      <p>{message('check.have-checked')}</p>
    </HomePage>
  );
}
