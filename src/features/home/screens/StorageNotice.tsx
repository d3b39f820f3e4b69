import { useHomeState } from '../homeContext';
import { StorageTrouble } from '#ui/components/StorageTrouble';

const titles = {
  memory: 'What you record is gone when this tab is closed',
  blocked: 'Nothing can be begun yet',
};

/** That what is recorded does not outlast the tab, or that nothing can be begun. */
export function StorageNotice() {
  return <StorageTrouble storage={useHomeState((state) => state.storage)} titles={titles} />;
}
