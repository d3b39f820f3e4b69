import type { Page } from '@playwright/test';
import type {} from '#tools/headless/storage';
import type { SetStart } from '#device/storage/keptSchemas';

/** The page's clock goes into each picture as black and white fields, this many bits of it, ms: 4.6 hours. */
const clockBits = 24;
export const clockRangeMs = 2 ** clockBits;

export const recordedSize = { width: 640, height: 480 };

export interface ClockRecording {
  /** Passed to the page: the set, and where the recorder may not take its own choice, the type. */
  start: SetStart;
  mimeType?: string;
}

/** What is found of an interrupted set after the page was opened again. */
export interface FoundClock {
  /** Clock in the last picture that can be decoded, ms modulo the range; null without a picture. */
  lastPictureMs: number | null;
  pictures: number;
  expectedPictures: number;
  durationMs: number;
  codec: string;
  /** Clock in the last row of joints. */
  lastRowMs: number | null;
  rows: number;
}

declare global {
  interface Window {
    clockProblems: string[];
    stopClock: () => Promise<{ bytes: number; problem: string | null }>;
  }
}

export async function openStoragePage(page: Page): Promise<void> {
  await page.goto('tools/headless/storage.html');
  await page.waitForFunction(() => 'storagePage' in window);
}

/** Records moving pictures that show the clock, and rows that hold it, until the page is closed. */
export async function beginClock(page: Page, recording: ClockRecording): Promise<string> {
  return page.evaluate(
    async ({ start, mimeType, bits, size }) => {
      const { openRepository, pickRecordingType, recordVideo } = window.storagePage;
      const canvas = Object.assign(document.createElement('canvas'), size);
      document.body.append(canvas);
      const context = canvas.getContext('2d')!;
      const field = { width: size.width / 6, height: size.height / (bits / 6) };
      const noise = context.createImageData(size.width, 40);
      const draw = () => {
        const clockMs = Date.now() % 2 ** bits;
        for (let bit = 0; bit < bits; bit++) {
          context.fillStyle = Math.floor(clockMs / 2 ** bit) % 2 === 1 ? '#fff' : '#000';
          const [column, row] = [bit % 6, Math.floor(bit / 6)];
          context.fillRect(column * field.width, row * field.height, field.width, field.height);
        }
        // Between two rows of fields: noise, so that the video is as large as one of a moving person.
        for (let at = 0; at < noise.data.length; at++) noise.data[at] = Math.random() * 256;
        context.putImageData(noise, 0, field.height - noise.height / 2);
      };
      draw();
      setInterval(draw, 20);
      const { repository } = await openRepository();
      window.clockProblems = [];
      const tell = ({ message }: Error) => window.clockProblems.push(message);
      const type = mimeType ?? pickRecordingType();
      const set = await repository.beginSet({ ...start, videoType: type }, tell);
      const video = recordVideo(canvas.captureStream(30), set.video!, { mimeType: type, onProblem: tell });
      const timer = setInterval(() => {
        const timeMs = video.videoTimeMs(performance.now());
        if (timeMs === null) return;
        const row = new Float32Array(99).fill(0.5);
        row[0] = Date.now() % 2 ** bits;
        set.addRow({ timeMs, row });
      }, 33);
      window.stopClock = async () => {
        clearInterval(timer);
        const { bytes, problem } = await video.stop();
        await set.flush().catch(() => undefined);
        await set.endVideo();
        return { bytes, problem: problem?.message ?? null };
      };
      return type;
    },
    { ...recording, bits: clockBits, size: recordedSize },
  );
}

/** Reads what is left of the only interrupted set. */
export async function findClock(page: Page): Promise<FoundClock> {
  return page.evaluate(
    async ({ bits, size }) => {
      const { openRepository, openFrameSource } = window.storagePage;
      const { repository } = await openRepository();
      const { found } = await repository.interrupted();
      if (found.length !== 1) throw new Error(`${found.length} interrupted sets were found.`);
      const { rows, video } = await repository.readInterrupted(found[0]!.start.id);
      const lastRowMs = rows.at(-1)?.row?.[0] ?? null;
      const kept = { lastRowMs, rows: rows.length };
      if (video === null) {
        return { ...kept, lastPictureMs: null, pictures: 0, expectedPictures: 0, durationMs: 0, codec: '' };
      }
      const source = await openFrameSource(video);
      const context = new OffscreenCanvas(size.width, size.height).getContext('2d')!;
      let pictures = 0;
      for await (const { picture } of source.frames(size.height)) {
        context.drawImage(picture, 0, 0);
        picture.close();
        pictures++;
      }
      const { data } = context.getImageData(0, 0, size.width, size.height);
      let lastPictureMs = 0;
      for (let bit = 0; bit < bits; bit++) {
        const x = Math.round(((bit % 6) + 0.5) * (size.width / 6));
        const y = Math.round((Math.floor(bit / 6) + 0.5) * (size.height / (bits / 6)));
        if (data[(y * size.width + x) * 4]! > 127) lastPictureMs += 2 ** bit;
      }
      const { expectedFrames: expectedPictures, durationMs, codec } = source.facts;
      return { ...kept, lastPictureMs, pictures, expectedPictures, durationMs, codec };
    },
    { bits: clockBits, size: recordedSize },
  );
}

/** Seconds from a clock that was recorded to a moment after it. */
export function secondsLost(recordedMs: number | null, untilMs: number): number {
  if (recordedMs === null) return Infinity;
  return ((((untilMs - recordedMs) % clockRangeMs) + clockRangeMs) % clockRangeMs) / 1000;
}
