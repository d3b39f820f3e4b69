import { useStore } from 'zustand';
import { createStoreContext } from '#shell/createStoreContext';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { App } from './store/createApp';

/** Tracking and reviewing a recording. */
export const {
  Provider: AppProvider,
  useOwner: useApp,
  useOwnerState: useAppState,
} = createStoreContext<App>('AppProvider');

/** The recording as it is now; drawn again when it is replaced. */
export function useRecording(): ShownRecording | null {
  const app = useApp();
  useStore(app.store, ({ revision }) => revision);
  return app.recording();
}
