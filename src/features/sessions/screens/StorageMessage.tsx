import { Button } from 'react-aria-components';
import { useKeptSessionsState } from '../keptSessionsContext';
import { StorageTrouble } from '#ui/components/StorageTrouble';

const titles = {
  memory: 'Nothing is kept after this tab is closed',
  blocked: 'What is kept here can’t be opened now',
};

/** That nothing lasts here, or that what is kept can't be got at; nothing where all is well. */
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
