/** A time in a video: '9.6 s', or '1:09.6' from one minute; nothing is before its start. */
export function formatTime(timeMs: number): string {
  const tenths = Math.round(Math.max(0, timeMs) / 100);
  const minutes = Math.floor(tenths / 600);
  const seconds = ((tenths % 600) / 10).toFixed(1);
  return minutes === 0 ? `${seconds} s` : `${minutes}:${seconds.padStart(4, '0')}`;
}
