import { message } from '#words/messages/message';
import { watchPage, type SeenPage } from './watchPage';

/**
 * 'unsupported' and 'refused': the person has to keep the screen on; a low battery may be the reason for a
 * refusal.
 */
export type AwakeState = 'asked' | 'on' | 'hidden' | 'refused' | 'unsupported';

export interface AwakeWorld {
  page: SeenPage;
  /** Undefined where the browser can't keep the screen on. */
  wakeLock: Pick<WakeLock, 'request'> | undefined;
}

/** Says what to do where the screen can't be kept on; null where it is kept on. */
export function awakeSentence(state: AwakeState): string | null {
  if (state !== 'refused' && state !== 'unsupported') return null;
  return message('trouble.awake');
}

/**
 * Keeps the screen on until it is stopped. A hidden page loses the lock, so it is requested again when the
 * page is back.
 *
 * @param onState  called with the state, at first and whenever it changes
 * @returns a function that stops it
 */
export function keepAwake(
  onState: (state: AwakeState) => void,
  { page, wakeLock }: AwakeWorld = { page: document, wakeLock: navigator.wakeLock },
): () => void {
  let isStopped = false;
  /** The newest request; an older one that succeeds late is released. */
  let newest = 0;
  let held: WakeLockSentinel | null = null;
  const tell = (state: AwakeState) => {
    if (!isStopped) onState(state);
  };
  const letGo = () => {
    newest++;
    void held?.release().catch(() => undefined);
    held = null;
  };
  const ask = async () => {
    if (wakeLock === undefined) return tell('unsupported');
    letGo();
    const mine = newest;
    tell('asked');
    try {
      const sentinel = await wakeLock.request('screen');
      if (isStopped || mine !== newest) return void sentinel.release().catch(() => undefined);
      held = sentinel;
      // The system may revoke it at any time, for example when the battery runs low.
      sentinel.addEventListener('release', () => {
        if (held !== sentinel) return;
        held = null;
        tell(page.visibilityState === 'visible' ? 'refused' : 'hidden');
      });
      tell('on');
    } catch {
      if (mine === newest) tell(page.visibilityState === 'visible' ? 'refused' : 'hidden');
    }
  };
  const stopWatching = watchPage((isVisible) => {
    if (isVisible) void ask();
  }, page);
  void ask();
  return () => {
    isStopped = true;
    stopWatching();
    letGo();
  };
}
