import { watchPage, type SeenPage } from './watchPage';

/** 'unsupported' and 'refused': the person has to see to it; a low battery may refuse it too. */
export type AwakeState = 'asked' | 'on' | 'hidden' | 'refused' | 'unsupported';

export interface AwakeWorld {
  page: SeenPage;
  /** Undefined where the browser can't keep the screen on. */
  wakeLock: Pick<WakeLock, 'request'> | undefined;
}

/** Says what to do where the screen can't be kept on; null where it is kept on. */
export function awakeSentence(state: AwakeState): string | null {
  if (state !== 'refused' && state !== 'unsupported') return null;
  return (
    'The screen may switch itself off while you exercise, and the recording would pause. ' +
    'Set a longer time until the screen switches off in the settings of this device, and switch power saving off.'
  );
}

/**
 * Keeps the screen on until it is stopped. A page that was hidden loses it, so it is asked for again when it is back.
 *
 * @param onState  hears how it stands, at first and whenever it changes
 * @returns the way to stop
 */
export function keepAwake(
  onState: (state: AwakeState) => void,
  { page, wakeLock }: AwakeWorld = { page: document, wakeLock: navigator.wakeLock },
): () => void {
  let isStopped = false;
  /** The newest request; an older one that comes through late is let go. */
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
      // The system may take it back in between, as when the battery runs low.
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
