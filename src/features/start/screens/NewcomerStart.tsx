import { Button } from 'react-aria-components';
import { useReview, useReviewState } from '#features/review/reviewContext';
import { LanguageSwitch } from '#shell/language/LanguageSwitch';
import { useNavigation } from '#shell/navigation/navigationContext';
import { useFileDrop } from '#ui/components/useFileDrop';
import { message } from '#words/messages/message';
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
    <StartFrame title={message('start.title')} ways={<LanguageSwitch />}>
      <h2 id="who-title">{message('start.question')}</h2>
      <div className="start-answers" role="group" aria-labelledby="who-title">
        <Button
          className="button button-primary"
          onPress={() => {
            role.choose('exercises');
            void navigation.show('home');
          }}
        >
          {message('start.exercise')}
        </Button>
        <p>{message('start.exercise.what')}</p>
        <Button className="button" onPress={() => role.choose('treats')}>
          {message('start.treat')}
        </Button>
        <p>{message('start.treat.what')}</p>
        <Button className="button" isDisabled={isOpening} onPress={() => void review.openExample()}>
          {message(isOpening ? 'start.example.opening' : 'start.example')}
        </Button>
        <p>{message('start.example.what')}</p>
      </div>
      <div className="soft">
        <p>{message('start.stays')}</p>
        <OfflineLine />
      </div>
    </StartFrame>
  );
}
