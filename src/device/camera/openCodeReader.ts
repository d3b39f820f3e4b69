/** Reads a QR code in the picture that a video shows; null where there is none to be read. */
export type CodeReader = (video: HTMLVideoElement) => Promise<string | null>;

/** The browser's own reader, where it has one. */
interface Detector {
  detect(picture: HTMLVideoElement): Promise<{ rawValue: string }[]>;
}
interface DetectorMaker {
  new (options: { formats: string[] }): Detector;
  getSupportedFormats(): Promise<string[]>;
}

/** A code that fills half of the picture's height has some eight px a square then. */
const longestSidePx = 960;

/** The platform's reader of codes where it has one, as on most phones; otherwise a library, fetched now. */
export async function openCodeReader(): Promise<CodeReader> {
  const { BarcodeDetector: Maker } = globalThis as { BarcodeDetector?: DetectorMaker };
  const formats = (await Maker?.getSupportedFormats().catch(() => [])) ?? [];
  if (Maker !== undefined && formats.includes('qr_code')) {
    const detector = new Maker({ formats: ['qr_code'] });
    return async (video) => (await detector.detect(video))[0]?.rawValue ?? null;
  }
  const { decodeQR } = await import('qr/decode.js');
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { willReadFrequently: true });
  return (video) => {
    const { videoWidth, videoHeight } = video;
    if (context === null || videoWidth === 0) return Promise.resolve(null);
    const scale = Math.min(1, longestSidePx / Math.max(videoWidth, videoHeight));
    canvas.width = Math.round(videoWidth * scale);
    canvas.height = Math.round(videoHeight * scale);
    context.drawImage(video, 0, 0, canvas.width, canvas.height);
    const { width, height, data } = context.getImageData(0, 0, canvas.width, canvas.height);
    try {
      return Promise.resolve(decodeQR({ width, height, data }));
    } catch {
      return Promise.resolve(null); // No code in it, or not sharp enough.
    }
  };
}
