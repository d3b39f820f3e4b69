import { createStoreContext } from '#shell/createStoreContext';
import type { Patients } from './store/createPatients';

/** The patients of this device. */
export const {
  Provider: PatientsProvider,
  useOwner: usePatients,
  useOwnerState: usePatientsState,
} = createStoreContext<Patients>('PatientsProvider');
