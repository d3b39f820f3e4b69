/** A time to wait, no more exact than is justified: 'a few seconds', 'about 40 seconds', 'about 3 minutes'. */
export function timeLeftWords(seconds: number): string {
  if (!Number.isFinite(seconds)) return 'not known yet';
  if (seconds < 8) return 'a few seconds';
  if (seconds < 90) return `about ${Math.round(seconds / 10) * 10} seconds`;
  return `about ${Math.round(seconds / 60)} minutes`;
}
