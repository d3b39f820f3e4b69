import { createStoreContext } from '../createStoreContext';
import type { PatientLanguage } from './createPatientLanguage';

/** The language of the patient's pages. */
export const {
  Provider: LanguageProvider,
  useOwner: usePatientLanguage,
  useOwnerState: usePatientLanguageState,
} = createStoreContext<PatientLanguage>('LanguageProvider');
