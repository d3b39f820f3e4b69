import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import type {} from '../../../../../tests/support/browser/videoMaker';
import { addVideoMaker, openHeadlessPage } from '../../../../../tests/support/browser/headlessPage';
import { projectRoot } from '../projectRoot';
import type { FaultDevice } from './faultDevice';
import { openStart } from './keptPages';
import { killWorker } from './killWorker';
import type { Fault } from './runFault';
import { shown } from './storageFaults';

const examplePath = join(projectRoot, 'fixtures/example.mp4');
/** Tracking is never waited for longer, where its joints are known, ms. */
const longestMs = 60_000;

/** The bytes of the example after a change. */
function changed(change: (bytes: Buffer) => void): Buffer {
  const bytes = readFileSync(examplePath);
  change(bytes);
  return bytes;
}

/** Where the content of a box begins. */
const contentOf = (bytes: Buffer, box: string) => bytes.indexOf(box, 'latin1') + 4;

/** Chooses a video on the first screen, and measures it where that is offered. */
async function measureFile(
  device: FaultDevice,
  name: string,
  content: Buffer,
  isOffered = true,
): Promise<Page> {
  const page = await openStart(device);
  const mimeType = name.endsWith('.webm') ? 'video/webm' : 'video/mp4';
  await page.locator('input[type=file]').setInputFiles({ name, mimeType, buffer: content });
  if (!isOffered) return page;
  await page.getByRole('radio', { name: 'Right leg' }).check({ force: true });
  await page.getByRole('button', { name: 'Measure this video' }).click();
  return page;
}

/** Waits until it is measured or refused, and gives what is said of it. */
async function outcome(page: Page): Promise<string | null> {
  await page
    .getByLabel('The measured video')
    .or(page.getByRole('alert'))
    .first()
    .waitFor({ timeout: longestMs });
  return (await page.locator('.message').allInnerTexts()).join(' ') || null;
}

/** Waits until the review of what was measured is shown. */
async function reviewed(page: Page): Promise<void> {
  await page.getByLabel('The measured video').waitFor({ timeout: longestMs });
}

/** A video that is made in a page of its own. */
async function makeVideo(device: FaultDevice, make: () => Promise<void>): Promise<Buffer> {
  const page = await device.context.newPage();
  await openHeadlessPage(page, examplePath);
  await addVideoMaker(page);
  await page.evaluate(make);
  const base64 = await page.evaluate(() => window.videoMaker.readBytes());
  await page.close();
  return Buffer.from(base64, 'base64');
}

/** Lets the files of the pose networks come otherwise than they were built. */
async function spoilModels(device: FaultDevice, spoil: (bytes: Buffer) => Buffer | null): Promise<void> {
  await device.context.route('**/models/*.bin', async (route) => {
    const answer = await route.fetch();
    const body = spoil(await answer.body());
    await (body === null ? route.fulfill({ status: 404 }) : route.fulfill({ response: answer, body }));
  });
}

const noModel = (name: string, says: RegExp, spoil: (bytes: Buffer) => Buffer | null): Fault => ({
  name,
  says,
  async put(device) {
    await spoilModels(device, spoil);
    return shown(await measureFile(device, 'example.mp4', readFileSync(examplePath)), /network/, longestMs);
  },
});

/** Runs in a worker: software graphics pass for a graphics processor, which is taken away after some drawings. */
const losesGraphics = `() => {
  const { getParameter, drawElements } = WebGL2RenderingContext.prototype;
  const rendererName = 0x9246;
  let left = 60;
  WebGL2RenderingContext.prototype.getParameter = function (name) {
    return name === rendererName ? 'A graphics processor' : getParameter.call(this, name);
  };
  WebGL2RenderingContext.prototype.drawElements = function (...asked) {
    if (--left === 0) this.getExtension('WEBGL_lose_context').loseContext();
    return drawElements.apply(this, asked);
  };
}`;

/** Faults of a video, and of what measures it. */
export const fileFaults: readonly Fault[] = [
  noModel('model-file-missing', /is missing\. Reload the page/, () => null),
  noModel('model-file-cut', /is not the one.*Reload the page/, (bytes) =>
    bytes.subarray(0, bytes.length / 2),
  ),
  noModel('model-file-changed', /is not the one.*Reload the page/, (bytes) => {
    bytes[1000]! ^= 1;
    return bytes;
  }),
  {
    name: 'wasm-out-of-memory',
    says: /too little memory left.*Close other pages/,
    async put(device) {
      await device.context.route('**/poseWorker-*.js', async (route) => {
        const answer = await route.fetch();
        const fault = `WebAssembly.instantiate = WebAssembly.instantiateStreaming = () => Promise.reject(new RangeError('WebAssembly.instantiate(): Out of memory'));\nWebAssembly.Memory = class { constructor() { throw new RangeError('WebAssembly.Memory(): could not allocate memory'); } };\n`;
        await route.fulfill({ response: answer, body: fault + (await answer.text()) });
      });
      const page = await measureFile(device, 'example.mp4', readFileSync(examplePath));
      return shown(page, /could not start/, longestMs);
    },
  },
  {
    name: 'graphics-context-lost-in-a-file',
    says: null,
    async put(device) {
      let workers = 0;
      await device.context.route('**/poseWorker-*.js', async (route) => {
        const answer = await route.fetch();
        // The first worker has a graphics processor, for a while; the next one has none.
        const before = workers++ === 0 ? `(${losesGraphics})();\n` : '';
        await route.fulfill({ response: answer, body: before + (await answer.text()) });
      });
      const short = readFileSync(join(projectRoot, 'fixtures/short.mp4'));
      const page = await measureFile(device, 'short.mp4', short.subarray(0, short.length / 3));
      await page.getByLabel('The measured video').waitFor({ timeout: 3 * longestMs });
      if (workers < 2) throw new Error('The graphics processor was not taken away.');
      return null;
    },
  },
  {
    name: 'threads-not-available',
    says: null,
    async put(device) {
      await device.context.route(/\/$/, async (route) => {
        const answer = await route.fetch();
        const headers = answer.headers();
        delete headers['cross-origin-opener-policy'];
        delete headers['cross-origin-embedder-policy'];
        await route.fulfill({ response: answer, headers });
      });
      const short = readFileSync(join(projectRoot, 'fixtures/short.mp4'));
      const page = await measureFile(device, 'short.mp4', short.subarray(0, short.length / 3));
      if (await page.evaluate(() => crossOriginIsolated)) throw new Error('Threads were available.');
      await reviewed(page);
      return null;
    },
  },
  {
    name: 'pose-worker-killed-in-a-file',
    says: null,
    hasCamera: true,
    tookMs: 10,
    async put(device) {
      const page = await measureFile(device, 'example.mp4', readFileSync(examplePath));
      await page.waitForTimeout(3000);
      await killWorker(page, 'poseWorker');
      await reviewed(page);
      return null;
    },
  },
  {
    name: 'video-of-two-hours',
    says: /longer than 30 minutes/,
    hasCamera: true,
    async put(device) {
      const slow = changed((bytes) => {
        // A time scale that is 350 times slower, in the track and in the whole film.
        bytes.writeUInt32BE(36, contentOf(bytes, 'mdhd') + 12);
        bytes.writeUInt32BE(3, contentOf(bytes, 'mvhd') + 12);
      });
      return shown(
        await measureFile(device, 'hours.mp4', slow, false),
        /hours.mp4.*(minutes|seconds)/,
        longestMs,
      );
    },
  },
  {
    name: 'video-that-declares-10000-by-10000',
    says: /\S/,
    hasCamera: true,
    async put(device) {
      const large = changed((bytes) => {
        // In the description of its pictures, and in the track: with 16 bits after the point there.
        bytes.writeUInt16BE(10_000, contentOf(bytes, 'avc1') + 24);
        bytes.writeUInt16BE(10_000, contentOf(bytes, 'avc1') + 26);
        const track = contentOf(bytes, 'tkhd');
        bytes.writeUInt32BE(10_000 * 65_536, track + 76);
        bytes.writeUInt32BE(10_000 * 65_536, track + 80);
      });
      return outcome(await measureFile(device, 'declared.mp4', large));
    },
  },
  {
    name: 'video-of-two-frames',
    says: /\S/,
    hasCamera: true,
    async put(device) {
      const video = await makeVideo(device, () => window.videoMaker.makeEmptyScene(2));
      const page = await measureFile(device, 'two.webm', video);
      return outcome(page);
    },
  },
  {
    name: 'video-in-4k-at-60-pictures',
    says: null,
    hasCamera: true,
    async put(device) {
      const video = await makeVideo(device, () =>
        window.videoMaker.makeMarked({ size: { width: 3840, height: 2160 }, frameRateHz: 60, toS: 0.5 }),
      );
      await reviewed(await measureFile(device, 'large.webm', video));
      return null;
    },
  },
  {
    name: 'video-whose-last-third-is-damaged',
    says: /of 617 frames/,
    hasCamera: true,
    async put(device) {
      const damaged = changed((bytes) => bytes.fill(0xff, Math.round(bytes.length * 0.67)));
      const page = await measureFile(device, 'damaged.mp4', damaged);
      await reviewed(page);
      return shown(page, /of 617 frames/, longestMs);
    },
  },
  {
    name: 'video-with-backward-times',
    says: /\S/,
    hasCamera: true,
    async put(device) {
      const backward = changed((bytes) => {
        const table = contentOf(bytes, 'ctts');
        const entries = bytes.readUInt32BE(table + 4);
        for (let entry = 0; entry < entries; entry++)
          bytes.writeUInt32BE((entries - entry) * 1024, table + 12 + 8 * entry);
      });
      const page = await measureFile(device, 'backward.mp4', backward);
      return outcome(page);
    },
  },
];
