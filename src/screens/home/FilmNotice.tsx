import { useHomeState } from '../../app/home/HomeContext';
import type { GuideView } from '../../guide/readGuide';

/** What to know meanwhile: a set that is not kept, a device that is slow, a screen that may go dark. */
export function FilmNotice({ phase }: { phase: GuideView['phase'] }) {
  const problem = useHomeState(({ problem }) => problem?.sentence ?? null);
  const pace = useHomeState(({ pace }) => (pace.state === 'known' ? pace.sentence : null));
  const awake = useHomeState((state) => state.awakeSentence);
  // While placing there is time to read.
  const others = phase === 'placing' ? [pace, awake] : [];
  const notice = [problem, ...others].find((sentence) => sentence !== null);
  return notice === undefined ? null : (
    <p className="film-notice" role={problem === null ? undefined : 'alert'}>
      {notice}
    </p>
  );
}
