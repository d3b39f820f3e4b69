import { useReviewState } from '#features/review/reviewContext';
import { usePatientLanguageState } from '#shell/language/languageContext';
import { useRoleState } from '../roleContext';
import { NewcomerStart } from './NewcomerStart';
import { TherapistStart } from './TherapistStart';

/** The tools, for people who treat others, bring a video or have just looked at one; for everybody else one question. */
export function StartScreen() {
  const language = usePatientLanguageState((state) => state.language);
  const role = useRoleState((state) => state.role);
  const hasResult = useReviewState(({ recording }) => recording !== null);
  const bringsVideo = useReviewState(({ chosen, opening }) => chosen !== null || opening === 'file');
  const hasTools = role === 'treats' || bringsVideo || (role === null && hasResult);
  return hasTools ? <TherapistStart /> : <NewcomerStart key={language} />;
}
