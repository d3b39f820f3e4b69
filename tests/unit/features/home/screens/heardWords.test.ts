import { describe, expect, it } from 'vitest';
import { limitEnds } from '#core/measures/limitEnd';
import { measures } from '#core/measures/measures';
import { fitWords, wordsWidthEm } from '#features/home/screens/fitWords';
import { heardWords } from '#features/home/screens/heardWords';
import { english } from '#words/messages/english';
import { spanish } from '#words/messages/spanish';

describe('heardWords(heard)', () => {
  it.each([
    ['in', 'Knee out', 'Good'],
    ['probably-in', null, 'Good'],
    ['out', 'Knee out', 'Knee out'],
    ['probably-out', 'Belt level', 'Belt level'],
    ['out', null, null],
    ['cant-tell', 'Knee in', null],
    ['not-measured', null, null],
  ] as const)('of %s with the cue %s is %s', (verdict, shortCue, words) => {
    expect(heardWords({ verdict, shortCue })).toBe(words);
  });
});

/** Place of the words on a page of 390 x 844, px: 32 % of the height above the bar, less the room around them. */
const place = { width: 358, height: 230 };
/** The font's capitals are 0.67 of its size: 78 px of them are 16 minutes of arc from 3 m on a phone 70 mm wide. */
const leastPx = 78 / 0.67;
/** The mark beside them, which reaches this far into the room at the edge. */
const markPx = 120;
const intoEdgePx = 12;

describe('the short cues of the measures', () => {
  const shortCues = [english, spanish].flatMap((catalogue) =>
    measures.flatMap(({ id }) => limitEnds.map((end) => catalogue[`short-cue.${id}.${end}`])),
  );
  it.each([...new Set(shortCues)])('%s is read from three metres, with its mark beside it', (words) => {
    const { lines, widestEm } = fitWords(words, place.width / place.height);
    const sizePx = Math.min(place.width / widestEm, place.height / (0.96 * lines.length));
    expect(sizePx).toBeGreaterThanOrEqual(leastPx);
    const shorter = Math.min(wordsWidthEm(lines[0]!), wordsWidthEm(lines.at(-1)!)) * sizePx;
    expect(shorter + markPx).toBeLessThanOrEqual(place.width + intoEdgePx);
  });
});
