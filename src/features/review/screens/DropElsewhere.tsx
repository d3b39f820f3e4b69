import { useApp } from '../appContext';
import { useFileDrop } from '#ui/components/useFileDrop';

/** Takes the next file, dropped anywhere on a review that needs none; the review stays within reach. */
export function DropElsewhere() {
  const app = useApp();
  useFileDrop((file) => {
    app.show('start');
    void app.openFile(file);
  });
  return null;
}
