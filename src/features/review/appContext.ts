import { createStoreContext } from '#shell/createStoreContext';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { App } from './store/createApp';

/** Tracking and reviewing a recording. */
export const {
  Provider: AppProvider,
  useOwner: useApp,
  useOwnerState: useAppState,
} = createStoreContext<App>('AppProvider');

export function useRecording(): ShownRecording | null {
  return useAppState(({ recording }) => recording);
}
