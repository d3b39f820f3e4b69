import { useReviewState } from '#features/review/reviewContext';
import { usePatientLanguageState } from '#shell/language/languageContext';
import { useRoleState } from '../roleContext';
import { NewcomerStart } from './NewcomerStart';
import { TherapistStart } from './TherapistStart';

/** The tools, for people who treat others or bring a video; for everybody else one question. */
export function StartScreen() {
  const language = usePatientLanguageState((state) => state.language);
  const treats = useRoleState(({ role }) => role === 'treats');
  const bringsVideo = useReviewState(({ chosen, opening }) => chosen !== null || opening === 'file');
  return treats || bringsVideo ? <TherapistStart /> : <NewcomerStart key={language} />;
}
