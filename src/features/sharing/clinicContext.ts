import { createStoreContext } from '#shell/createStoreContext';
import type { Clinic } from './store/createClinic';

/** Receiving sessions. */
export const {
  Provider: ClinicProvider,
  useOwner: useClinic,
  useOwnerState: useClinicState,
} = createStoreContext<Clinic>('ClinicProvider');
