import { useNavigation } from '#shell/navigation/navigationContext';
import { useFileDrop } from '#ui/components/useFileDrop';
import { useReview } from '../reviewContext';

/** Takes the next file, dropped anywhere on a review that needs none; the user can still go back to the review. */
export function DropElsewhere() {
  const review = useReview();
  const navigation = useNavigation();
  useFileDrop((_, files) => {
    void navigation.show('start').then((isShown) => (isShown ? review.openFiles(files) : undefined));
  });
  return null;
}
