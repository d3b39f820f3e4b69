import { StorageTrouble } from '#ui/components/StorageTrouble';
import { message } from '#words/messages/message';
import { useHomeState } from '../homeContext';

const titles = () => ({
  memory: message('trouble.tab-memory'),
  'no-videos': message('trouble.tab-videos'),
  blocked: message('trouble.cannot-start'),
});

/** Warns that recordings are lost with the tab, or that nothing can be started. */
export function StorageNotice() {
  return <StorageTrouble storage={useHomeState((state) => state.storage)} titles={titles()} />;
}
