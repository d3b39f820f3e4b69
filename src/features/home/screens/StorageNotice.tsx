import { StorageTrouble } from '#ui/components/StorageTrouble';
import { useHomeState } from '../homeContext';

const titles = {
  memory: 'What you record will be lost when this tab is closed',
  'no-videos': 'Videos will be lost when this tab is closed',
  blocked: 'You cannot start yet',
};

/** Warns that recordings are lost with the tab, or that nothing can be started. */
export function StorageNotice() {
  return <StorageTrouble storage={useHomeState((state) => state.storage)} titles={titles} />;
}
