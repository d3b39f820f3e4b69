import type {} from '../../../../../tests/support/browser/stagedCameraPage';
import { hasWholeSet, inMiddle, toMiddle } from './homeFaults';
import { finishSession, newSets, toCamera } from './homeSet';
import type { Fault } from './runFault';
import { shown } from './storageFaults';

/** How long something stays in the picture, ms. */
const sceneMs = 4000;

/** Faults of what the camera sees. */
export const sceneFaults: readonly Fault[] = [
  {
    name: 'poster-of-a-person-in-a-set',
    says: null,
    hasCamera: true,
    // The network follows the poster while the person is gone: still, it counts nothing.
    holds: (after, before) => hasWholeSet(after, before) && newSets(after, before)[0]!.repetitions <= 3,
    async put(device) {
      const page = await toMiddle(device);
      await page.evaluate(() => window.stage.show('poster'));
      await page.waitForTimeout(sceneMs);
      await page.evaluate(() => window.stage.show(null));
      await finishSession(page);
      return null;
    },
  },
  {
    name: 'mirror-image-in-a-set',
    says: null,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      const page = await toMiddle(device);
      await page.evaluate(() => window.stage.show('mirror-image'));
      await page.waitForTimeout(sceneMs);
      await page.evaluate(() => window.stage.show(null));
      await finishSession(page);
      return null;
    },
  },
  {
    name: 'room-that-is-dark',
    says: /too dark|More light/,
    hasCamera: true,
    async put(device) {
      const page = await toCamera(device);
      await page.evaluate(() => {
        window.stage.change({ isDark: true });
        window.stage.show('nobody');
      });
      await page.getByRole('button', { name: 'Switch the camera on' }).click();
      await page.getByRole('button', { name: 'Begin' }).click();
      return shown(page, /too dark|More light/);
    },
  },
  {
    name: 'light-goes-out-in-a-set',
    says: /out of the picture|too dark/,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      const dark = (isDark: boolean) => (page: Awaited<ReturnType<typeof toMiddle>>) =>
        page.evaluate((is) => {
          window.stage.change({ isDark: is });
          window.stage.show(is ? 'nobody' : null);
        }, isDark);
      return inMiddle(await toMiddle(device), /out of the picture|too dark/, dark(true), dark(false));
    },
  },
];
