import { useHomeState, useHomeStep } from '../homeContext';

/**
 * What to know meanwhile: a set that is not kept, a device that is slow, a screen that may go dark.
 *
 * @param isCalm  whether there is time to read
 */
export function FilmNotice({ isCalm }: { isCalm: boolean }) {
  const problem = useHomeState(({ problem }) => problem?.sentence ?? null);
  const pace = useHomeState(({ pace }) => (pace.state === 'known' ? pace.sentence : null));
  const awake = useHomeStep('exercise', (part) => part.awakeSentence);
  const others = isCalm ? [pace, awake] : [];
  const notice = [problem, ...others].find((sentence) => sentence !== null);
  return notice === undefined ? null : (
    <p className="film-notice" role={problem === null ? undefined : 'alert'}>
      {notice}
    </p>
  );
}
