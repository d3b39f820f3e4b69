import type { VideoSample, VideoSampleSink } from 'mediabunny';

/** When the figure of fixtures/short.mp4 stands upright, seconds, and its outline then: x, y in px of the clip. */
const standingS = 2.4;
const outline = [
  '252,172 221,185 221,235 233,260 190,275 160,290 160,315 190,330 205,370 205,400 185,455 180,510 187,520 205,610',
  '208,640 200,680 207,715 205,755 197,790 200,815 240,815 240,785 238,755 238,700 246,640 248,600 256,525 272,525',
  '282,580 290,620 296,660 298,700 295,740 293,780 300,788 330,780 332,755 325,735 322,700 326,650 322,620 325,560',
  '328,515 328,500 315,450 305,400 305,380 330,340 330,310 320,290 340,268 290,285 265,265 262,240 283,225 283,190',
  '265,172',
].flatMap((line) => line.split(' ').map((point) => point.split(',').map(Number) as [number, number]));

/** The bystander's size compared with the person, and the position of its feet, px: at the foot of the wall. */
const scale = 0.7;
const floorY = 725;
const standing = { middleX: 252, feetY: 815 };

/** The person is within these columns, and the wall is bare in the two stretches next to them, px. */
const personX = { from: 165, to: 385 };
const bareX = [
  { from: 120, to: 160 },
  { from: 390, to: 430 },
];
/** Sum of colour differences to the wall from which a pixel belongs to the person or the seat. */
const differsFrom = 60;

/**
 * Puts a second person into fixtures/short.mp4: a smaller, still copy of the figure that crosses the picture behind
 * it. Whatever differs from the wall next to it stays in front.
 */
export async function createBystander(
  sink: VideoSampleSink,
  { width, height }: { width: number; height: number },
): Promise<{ compose(sample: VideoSample, progress: number): OffscreenCanvas }> {
  const picture = createContext(width, height);
  const bystander = createContext(width, height);
  const result = createContext(width, height);
  const upright = (await sink.getSample(standingS))!;
  outline.forEach(([x, y], i) => (i === 0 ? bystander.moveTo(x, y) : bystander.lineTo(x, y)));
  bystander.clip();
  upright.draw(bystander, 0, 0, width, height);
  upright.close();

  return {
    /** @param progress  0 to 1: the bystander comes in at the left edge and leaves at the right one */
    compose(sample, progress) {
      sample.draw(picture, 0, 0, width, height);
      result.drawImage(picture.canvas, 0, 0);
      const middle = progress * (width + 200) - 100;
      result.drawImage(
        bystander.canvas,
        middle - scale * standing.middleX,
        floorY - scale * standing.feetY,
        scale * width,
        scale * height,
      );
      keepPerson(picture, width, height);
      result.drawImage(picture.canvas, 0, 0);
      return result.canvas;
    },
  };
}

/** Makes everything transparent that is not the person. */
function keepPerson(picture: OffscreenCanvasRenderingContext2D, width: number, height: number): void {
  const image = picture.getImageData(0, 0, width, height);
  const { data } = image;
  for (let y = 0; y < height; y++) {
    const bare = bareColour(data, y * width);
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * 4;
      const difference = [0, 1, 2].reduce((sum, c) => sum + Math.abs(data[at + c]! - bare[c]!), 0);
      if (x < personX.from || x > personX.to || difference < differsFrom) data[at + 3] = 0;
    }
  }
  picture.putImageData(image, 0, 0);
}

/** Mean colour of a row where nothing is in front of the wall. */
function bareColour(data: Uint8ClampedArray, rowStart: number): [number, number, number] {
  const sums: [number, number, number] = [0, 0, 0];
  let count = 0;
  for (const { from, to } of bareX) {
    for (let x = from; x < to; x++, count++) {
      for (const c of [0, 1, 2] as const) sums[c] += data[(rowStart + x) * 4 + c]!;
    }
  }
  return [sums[0] / count, sums[1] / count, sums[2] / count];
}

function createContext(width: number, height: number): OffscreenCanvasRenderingContext2D {
  return new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })!;
}
