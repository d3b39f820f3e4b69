import { Button } from 'react-aria-components';
import { useReview, useReviewState } from '#features/review/reviewContext';
import { useNavigation } from '#shell/navigation/navigationContext';
import { useFileDrop } from '#ui/components/useFileDrop';
import { useRole } from '../roleContext';
import { OfflineLine } from './OfflineLine';
import { StartFrame } from './StartFrame';

/** One sentence, and one question; the answer is where the page opens from then on. */
export function NewcomerStart() {
  const review = useReview();
  const navigation = useNavigation();
  const role = useRole();
  useFileDrop((_, files) => void review.openFiles(files));
  const isOpening = useReviewState((state) => state.opening === 'example');
  return (
    <StartFrame title="Overfoot shows whether your knee stays over your foot while you exercise on one leg.">
      <h2 id="who-title">What would you like to do?</h2>
      <div className="start-answers" role="group" aria-labelledby="who-title">
        <Button
          className="button button-primary"
          onPress={() => {
            role.choose('exercises');
            void navigation.show('home');
          }}
        >
          I exercise
        </Button>
        <p>Your phone or laptop films you and counts for you.</p>
        <Button className="button" onPress={() => role.choose('treats')}>
          I treat people
        </Button>
        <p>Write plans, view sessions, measure a video.</p>
        <Button className="button" isDisabled={isOpening} onPress={() => void review.openExample()}>
          {isOpening ? 'Opening the example …' : 'Show me an example'}
        </Button>
        <p>An invented person stands up six times from a chair.</p>
      </div>
      <div className="soft">
        <p>Your video stays on this device.</p>
        <OfflineLine />
      </div>
    </StartFrame>
  );
}
