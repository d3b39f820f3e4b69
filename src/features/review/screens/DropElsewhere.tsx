import { useNavigation } from '#shell/navigation/navigationContext';
import { useFileDrop } from '#ui/components/useFileDrop';
import { useApp } from '../appContext';

/** Takes the next file, dropped anywhere on a review that needs none; the user can still go back to the review. */
export function DropElsewhere() {
  const app = useApp();
  const navigation = useNavigation();
  useFileDrop((file) => {
    void navigation.show('start').then((isShown) => (isShown ? app.openFile(file) : undefined));
  });
  return null;
}
