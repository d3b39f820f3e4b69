import { useNavigation } from '#shell/navigation/navigationContext';
import { useApp } from '../appContext';
import { useFileDrop } from '#ui/components/useFileDrop';

/** Takes the next file, dropped anywhere on a review that needs none; the review stays within reach. */
export function DropElsewhere() {
  const app = useApp();
  const navigation = useNavigation();
  useFileDrop((file) => {
    void navigation.show('start').then((isShown) => (isShown ? app.openFile(file) : undefined));
  });
  return null;
}
