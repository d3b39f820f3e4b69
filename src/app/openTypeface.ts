import { inTime } from '#device/inTime';

/** Longer than a phone's network takes; the page is shown without its typeface then. */
const longestMs = 1000;

/**
 * Fetches the page's typeface, in both weights. Text that is drawn without it moves when it comes, and a button
 * with it, from beneath a finger.
 */
export async function openTypeface(fonts: Pick<FontFaceSet, 'load'>): Promise<void> {
  const weights = [400, 700].map((weight) => fonts.load(`${weight} 1em "Atkinson Hyperlegible"`));
  const opening = Promise.all(weights).then(() => undefined);
  await inTime(opening, longestMs, () => new Error('The typeface is late.')).catch(() => undefined);
}
