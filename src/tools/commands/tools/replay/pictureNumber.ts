/**
 * A picture's number is a row of black and white fields along its top: a white one, a black one, then its bits, the
 * lowest first. Codecs and scaling leave them as they are.
 */
const bits = 10;
const fields = bits + 2;
/** Height of the fields as a share of the picture's. */
const heightShare = 0.04;

type Context2d = Pick<CanvasRenderingContext2D, 'fillStyle' | 'fillRect'>;

export function drawNumber(
  context: Context2d,
  number: number,
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
): void {
  const isWhite = (field: number) => (field < 2 ? field === 0 : ((number >> (field - 2)) & 1) === 1);
  for (let field = 0; field < fields; field++) {
    context.fillStyle = isWhite(field) ? '#fff' : '#000';
    context.fillRect((field * widthPx) / fields, 0, widthPx / fields, heightPx * heightShare);
  }
}

/** Null where the picture has none. */
export function readNumber(picture: ImageBitmap): number | null {
  const { width, height } = picture;
  const context = new OffscreenCanvas(width, height).getContext('2d')!;
  context.drawImage(picture, 0, 0);
  const { data } = context.getImageData(0, Math.round((height * heightShare) / 2), width, 1);
  const brightness = Array.from(
    { length: fields },
    (_, field) => data[4 * Math.round(((field + 0.5) * width) / fields)]!,
  );
  if (brightness.some((value) => value > 60 && value < 195)) return null;
  const [first, second, ...rest] = brightness.map((value) => value > 127);
  if (!first || second) return null;
  return rest.reduce((number, isWhite, bit) => number + (isWhite ? 2 ** bit : 0), 0);
}
