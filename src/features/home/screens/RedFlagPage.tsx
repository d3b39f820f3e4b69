import { Button } from 'react-aria-components';
import { redFlags } from '#core/safety/redFlags';
import { capitalised } from '#words/capitalised';
import { useHome, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';

/** Which of the signs applies, and then who to turn to; the way on is closed. */
export function RedFlagPage({ onBack }: { onBack: () => void }) {
  const home = useHome();
  const chosen = useHomeStep('overview', ({ redFlag }) => redFlags.find(({ id }) => id === redFlag));
  const takeBack = () => {
    home.setRedFlag(null);
    onBack();
  };
  if (chosen !== undefined) {
    return (
      <HomePage
        title="Do not exercise today"
        actions={
          <>
            <Button className="button button-primary" onPress={() => home.leave()}>
              End here
            </Button>
            <Button className="button" onPress={takeBack}>
              That was a mistake
            </Button>
          </>
        }
      >
        <p>You chose: {chosen.words}.</p>
        <p className="flag-advice">{chosen.advice}</p>
        <p>This program can’t tell what the cause is. Please have it checked by someone who can.</p>
      </HomePage>
    );
  }
  return (
    <HomePage title="Which one applies to you?" leave={{ words: 'Back', onPress: onBack }}>
      <div className="home-section">
        {redFlags.map(({ id, words }) => (
          <Button key={id} className="button flag-button" onPress={() => home.setRedFlag(id)}>
            {capitalised(words)}
          </Button>
        ))}
      </div>
      <div className="home-end" />
    </HomePage>
  );
}
