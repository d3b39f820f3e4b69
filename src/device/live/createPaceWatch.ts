import { leastLiveFps } from './decideLive';

/** After this long below the least rate, live feedback ends, ms; a hiccup is shorter. */
const bearableMs = 3000;

/**
 * Watches whether a device that was fast enough stays fast enough: warm or low on power, it may not.
 *
 * @returns  a function from the time (ms, any clock that only goes forward) and the pictures tracked a second
 *   to whether live feedback may continue; once it may not, this holds until the next set. After a pause,
 *   start with a new one.
 */
export function createPaceWatch(): (nowMs: number, trackedFps: number) => boolean {
  let slowSinceMs: number | null = null;
  let mayGoOn = true;
  return (nowMs, trackedFps) => {
    if (trackedFps >= leastLiveFps) slowSinceMs = null;
    else slowSinceMs ??= nowMs;
    if (slowSinceMs !== null && nowMs - slowSinceMs >= bearableMs) mayGoOn = false;
    return mayGoOn;
  };
}
