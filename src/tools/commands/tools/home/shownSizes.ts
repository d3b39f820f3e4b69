import { verdictColours } from '#ui/drawing/verdictForm';

/** Something to be read while working, with its height on the screen: of letters that of capitals. */
export interface ShownSize {
  what: string;
  /** px of the page */
  heightPx: number;
}

/** Colours this close together are one: a codec or an edge changes them. */
const sameColour = 12;
/** With fewer px of a colour it is an edge, not a mark. */
const leastPx = 30;

/** What the page shows at this moment, apart from buttons, which are pressed at the device. */
export function shownSizes(): ShownSize[] {
  const film = document.querySelector('main.film');
  if (film === null) return [];
  return [...wordSizes(film), ...markSizes(film), ...kneeSizes(film)];
}

const hidden = 'button, .visually-hidden, [hidden]';

function wordSizes(film: Element): ShownSize[] {
  const context = document.createElement('canvas').getContext('2d')!;
  const walker = document.createTreeWalker(film, NodeFilter.SHOW_TEXT);
  const sizes: ShownSize[] = [];
  while (walker.nextNode() !== null) {
    const text = walker.currentNode.textContent?.trim() ?? '';
    const element = walker.currentNode.parentElement;
    if (text === '' || element === null || element.closest(hidden) !== null || !element.checkVisibility())
      continue;
    const { fontWeight, fontSize, fontFamily } = getComputedStyle(element);
    context.font = `${fontWeight} ${fontSize} ${fontFamily}`;
    sizes.push({ what: text, heightPx: context.measureText('H').actualBoundingBoxAscent });
  }
  return sizes;
}

/** Of the drawn shapes with their strokes, not of the box round them; the smaller of width and height. */
function markSizes(film: Element): ShownSize[] {
  return [...film.querySelectorAll('svg')]
    .filter((svg) => svg.closest(hidden) === null && svg.checkVisibility())
    .map((svg) => {
      const shapes = [...svg.querySelectorAll<SVGGeometryElement>('path, circle, rect')].map(drawnBox);
      const width =
        Math.max(...shapes.map(({ right }) => right)) - Math.min(...shapes.map(({ left }) => left));
      const height =
        Math.max(...shapes.map(({ bottom }) => bottom)) - Math.min(...shapes.map(({ top }) => top));
      return { what: `mark ${svg.getAttribute('class') ?? ''}`, heightPx: Math.min(width, height) };
    });
}

/** A browser's box of a shape leaves out its stroke, half of which lies outside. */
function drawnBox(shape: SVGGeometryElement): Record<'left' | 'top' | 'right' | 'bottom', number> {
  const { left, top, right, bottom } = shape.getBoundingClientRect();
  const { stroke, strokeWidth } = getComputedStyle(shape);
  const { a = 1, b = 0 } = shape.getScreenCTM() ?? {};
  const half = stroke === 'none' ? 0 : (parseFloat(strokeWidth) * Math.hypot(a, b)) / 2;
  return { left: left - half, top: top - half, right: right + half, bottom: bottom + half };
}

/** The knee's mark, found by its colours in what is drawn over the picture. */
function kneeSizes(film: Element): ShownSize[] {
  return [...film.querySelectorAll('canvas')].flatMap((canvas) => {
    const { width, height } = canvas;
    const pixels = canvas.getContext('2d')?.getImageData(0, 0, width, height).data;
    if (pixels === undefined) return [];
    const shownPx = canvas.getBoundingClientRect().height / height;
    return [...new Set(Object.values(verdictColours))].flatMap((colour) => {
      const wanted = [1, 3, 5].map((from) => parseInt(colour.slice(from, from + 2), 16));
      let [count, least, most] = [0, Infinity, -Infinity];
      for (let at = 0; at < pixels.length; at += 4) {
        if (pixels[at + 3]! < 255) continue;
        if (!wanted.every((value, channel) => Math.abs(value - pixels[at + channel]!) <= sameColour))
          continue;
        const row = Math.floor(at / 4 / width);
        count++;
        [least, most] = [Math.min(least, row), Math.max(most, row)];
      }
      return count < leastPx ? [] : [{ what: 'the knee’s mark', heightPx: (most - least + 1) * shownPx }];
    });
  });
}
