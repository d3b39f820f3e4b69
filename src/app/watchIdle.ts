import { createMarks } from '#device/storage/marks';
import type { OpenedRepository } from '#device/storage/openRepository';
import { setMark } from '#device/storage/setMark';
import { createIdleLock, type IdleLock } from '#features/lock/store/createIdleLock';
import type { Navigation } from '#shell/navigation/createNavigation';
import type { Notes } from '#shell/notes';

const lookEveryMs = 10_000;
const touches = ['pointerdown', 'pointermove', 'keydown', 'wheel', 'touchstart'];

interface Parts {
  notes: Notes;
  navigation: Pick<Navigation, 'holdsWork'>;
  openRepository: () => Promise<OpenedRepository>;
}

/** Locks the page once nobody has touched it for a while. */
export function watchIdle({ notes, navigation, openRepository }: Parts): IdleLock {
  const marks = createMarks();
  const isRecording = async () => [...(await marks.held())].some((name) => name.startsWith(setMark));
  const idle = createIdleLock({
    notes,
    isLocked: async () => (await (await openRepository()).repository.lock?.isOn()) ?? false,
    isBusy: async () => navigation.holdsWork() || (await isRecording()),
    lockNow: () => location.reload(),
    nowMs: () => Date.now(),
  });
  for (const touch of touches) addEventListener(touch, () => idle.touch(), { passive: true });
  const look = () => void idle.look().catch(() => undefined);
  setInterval(look, lookEveryMs);
  // A computer that wakes up has slept through the interval.
  document.addEventListener('visibilitychange', look);
  return idle;
}
