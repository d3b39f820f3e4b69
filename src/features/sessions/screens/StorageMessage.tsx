import { Button } from 'react-aria-components';
import { StorageTrouble } from '#ui/components/StorageTrouble';
import { useKeptSessionsState } from '../keptSessionsContext';

const titles = {
  memory: 'Nothing is kept after this tab is closed',
  'no-videos': 'Videos are not kept after this tab is closed',
  blocked: 'What is kept here can’t be opened now',
};

/** Warns that nothing is saved beyond this tab, or that saved sessions can't be opened; nothing where all is well. */
export function StorageMessage() {
  return (
    <StorageTrouble
      storage={useKeptSessionsState((state) => state.storage)}
      titles={titles}
      actions={
        <Button className="button" onPress={() => location.reload()}>
          Reload
        </Button>
      }
    />
  );
}
