import type { FrameSource } from '#device/frames/frameSource';

const jpegQuality = 0.92;

/**
 * The pictures of a video as JPEG files at an even pace, whatever its own.
 *
 * @param rateHz  pictures a second; the last frame shown at each instant is taken
 * @param take  gets each picture in base 64, and how often it comes in a row
 */
export async function jpegPictures(
  source: FrameSource,
  rateHz: number,
  take: (base64: string, times: number) => Promise<void>,
): Promise<void> {
  const canvas = new OffscreenCanvas(source.facts.widthPx, source.facts.heightPx);
  const context = canvas.getContext('2d', { alpha: false })!;
  const encode = async () =>
    base64Of(await canvas.convertToBlob({ type: 'image/jpeg', quality: jpegQuality }));
  let given = 0;
  /** Takes the shown picture for every instant before a time. */
  const takeUntil = async (timeMs: number) => {
    const wanted = Math.ceil((timeMs * rateHz) / 1000 - 1e-6);
    if (wanted <= given) return;
    await take(await encode(), wanted - given);
    given = wanted;
  };
  let firstMs: number | null = null;
  for await (const { timeMs, picture } of source.frames(Infinity)) {
    firstMs ??= timeMs;
    await takeUntil(timeMs - firstMs);
    context.drawImage(picture, 0, 0);
    picture.close();
  }
  if (firstMs !== null) await takeUntil(source.facts.durationMs - firstMs);
}

function base64Of(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve((reader.result as string).split(',')[1]!);
    reader.onerror = () => reject(reader.error!);
    reader.readAsDataURL(blob);
  });
}
