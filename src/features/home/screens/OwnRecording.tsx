import { Button, FileTrigger } from 'react-aria-components';
import { useHome } from '../homeContext';

/** Opens a video from the device's own camera app as the next set. */
export function OwnRecording({ words, isPrimary = false }: { words: string; isPrimary?: boolean }) {
  const home = useHome();
  return (
    <FileTrigger
      acceptedFileTypes={['video/*', '.mkv']}
      onSelect={(files) => {
        const file = files?.[0];
        if (file !== undefined) void home.openOwnRecording(file);
      }}
    >
      <Button className={isPrimary ? 'button button-primary' : 'button'}>{words}</Button>
    </FileTrigger>
  );
}
