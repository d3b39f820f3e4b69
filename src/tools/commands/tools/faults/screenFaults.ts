import type { Page } from '@playwright/test';
import { openKeptSessions } from '../openKeptSessions';
import type { FaultDevice } from './faultDevice';
import { mayBeFull, setFull } from './fullDevice';
import { openStart } from './keptPages';
import type { Fault } from './runFault';
import { shown } from './storageFaults';

/** Opens the first kept set in the review. */
export async function openReview(device: FaultDevice, prepare?: () => void): Promise<Page> {
  const page = await device.open(prepare);
  await openKeptSessions(page);
  const set = page.getByRole('grid', { name: 'Sets' }).getByRole('row').first();
  await set.filter({ hasText: 'In line' }).waitFor();
  await set.focus();
  await page.keyboard.press('Enter');
  await page.getByRole('grid', { name: 'Repetitions' }).waitFor();
  return page;
}

/** Chooses a file on the first screen, and gives what is said of it. */
async function openFile(
  device: FaultDevice,
  name: string,
  content: Buffer,
  says: RegExp,
): Promise<string | null> {
  const page = await openStart(device);
  const mimeType = name.endsWith('.json') ? 'application/json' : 'video/mp4';
  await page.locator('input[type=file]').setInputFiles({ name, mimeType, buffer: content });
  return shown(page, says);
}

const isReviewed = (key: string, { recordings }: FaultDevice) => key === `recording ${recordings[0]!.id}`;

/** A box of an MP4 file. */
function box(type: string, ...content: Buffer[]): Buffer {
  const body = Buffer.concat(content);
  const head = Buffer.alloc(8);
  head.writeUInt32BE(body.length + 8);
  head.write(type, 4, 'latin1');
  return Buffer.concat([head, body]);
}

function numbers(...values: number[]): Buffer {
  const bytes = Buffer.alloc(4 * values.length);
  values.forEach((value, at) => bytes.writeUInt32BE(value, 4 * at));
  return bytes;
}

export const screenFaults: readonly Fault[] = [
  {
    name: 'screen-throws',
    says: /stopped working/,
    async put(device) {
      const page = await openReview(device);
      await page.evaluate(() => {
        CanvasRenderingContext2D.prototype.clearRect = () => {
          throw new RangeError('negative radius');
        };
        Array.prototype.findLast = () => {
          throw new RangeError('negative radius');
        };
      });
      await page.setViewportSize({ width: 700, height: 700 });
      await page.keyboard.press('ArrowRight');
      return shown(page, /stopped working/);
    },
  },
  {
    name: 'nobody-catches-an-error',
    says: /What is kept on this device stays/,
    async put(device) {
      const page = await openStart(device);
      await page.evaluate(() => void Promise.reject(new Error('unforeseen')));
      return shown(page, /What is kept on this device stays/);
    },
  },
  {
    name: 'remark-typed-and-tab-crashed',
    says: null,
    mayChange: isReviewed,
    holds: (after) => Object.values(after).some((text) => text.includes('The chair slid on the rug.')),
    async put(device) {
      const page = await openReview(device);
      await page.getByRole('tab', { name: /^Remarks/ }).click();
      await page
        .getByRole('textbox', { name: /^On the set/ })
        .pressSequentially('The chair slid on the rug.');
      await page.getByText('Saved on this device').waitFor();
      await page.waitForTimeout(1000);
      await page.close({ runBeforeUnload: false });
      return null;
    },
  },
  {
    name: 'full-while-a-review-is-saved',
    says: /storage is full/,
    mayChange: isReviewed,
    holds: (after) => Object.values(after).some((text) => text.includes('There is room again.')),
    async put(device) {
      const page = await openReview(device, mayBeFull);
      await page.getByRole('tab', { name: /^Remarks/ }).click();
      const remark = page.getByRole('textbox', { name: /^On the set/ });
      await setFull(page, true);
      await remark.pressSequentially('There is no room.');
      const sentence = await shown(page, /storage is full/);
      await setFull(page, false);
      await remark.fill('There is room again.');
      await remark.blur();
      await page.waitForTimeout(1500); // What was typed is saved a moment later.
      await page.getByText('Saved on this device').waitFor();
      return sentence;
    },
  },
  {
    name: 'clock-back-after-deletion',
    says: null,
    mayChange: (key, { sessions, recordings }) =>
      key.endsWith(sessions[0].id) || recordings.slice(0, 2).some(({ id }) => key.endsWith(id)),
    holds: (after) =>
      !Object.keys(after).some((key) => key.startsWith('session 3b0c3c52') && key.endsWith('1')),
    async put(device) {
      const page = await device.open();
      await openKeptSessions(page);
      await page.getByRole('button', { name: 'Delete …' }).click();
      await page.getByRole('button', { name: 'Delete', exact: true }).click();
      await page.close({ runBeforeUnload: false });
      const later = await device.open(() => {
        const { now } = Date;
        Date.now = () => now() - 2 * 86_400_000;
      });
      await openKeptSessions(later);
      await later.getByText('Quiet Otter 3').first().waitFor();
      return null;
    },
  },
  {
    name: 'file-of-nested-brackets',
    says: /holds more than one can/,
    put: (device) =>
      openFile(
        device,
        'bomb.json',
        Buffer.from('['.repeat(3_000_000)),
        /holds more than one can|not a recording/,
      ),
  },
  {
    name: 'file-of-a-million-objects',
    says: /holds more than one can/,
    put: (device) =>
      openFile(
        device,
        'bomb.json',
        Buffer.from(`[${'{},'.repeat(1_000_000)}{}]`),
        /holds more than one can|not a recording/,
      ),
  },
  {
    name: 'file-of-a-day-in-two-frames',
    says: /longer than 30 minutes/,
    put(device) {
      const recording = structuredClone(device.recordings[0]!);
      recording.observed.timesMs = recording.observed.timesMs.map((timeMs, at, all) =>
        at === all.length - 1 ? 86_400_000 : timeMs,
      );
      return openFile(device, 'day.json', Buffer.from(JSON.stringify(recording)), /longer than|damaged/);
    },
  },
  {
    name: 'file-with-a-picture-of-one-line',
    says: /damaged at "video/,
    put(device) {
      const recording = structuredClone(device.recordings[0]!);
      recording.video.heightPx = 1;
      return openFile(device, 'line.json', Buffer.from(JSON.stringify(recording)), /damaged/);
    },
  },
  {
    name: 'video-that-announces-billions-of-frames',
    says: /more than 108000 frames/,
    put(device) {
      const handler = box('hdlr', numbers(0, 0), Buffer.from('vide'), numbers(0, 0, 0));
      const tables = [box('stsz', numbers(0, 500, 2 ** 31)), box('stts', numbers(0, 1, 2 ** 31, 1))];
      const track = box('trak', box('mdia', handler, box('minf', box('stbl', ...tables))));
      const file = Buffer.concat([box('ftyp', Buffer.from('isom'), numbers(0)), box('moov', track)]);
      return openFile(device, 'huge.mp4', file, /huge.mp4/);
    },
  },
];
