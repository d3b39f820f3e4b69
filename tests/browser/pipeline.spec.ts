import { expect, test, type Page } from '@playwright/test';
import { median } from 'd3-array';
import { keypointNames } from '#core/keypoints/keypointNames';
import {
  addVideoMaker,
  completeRepetitions,
  fixture,
  measured,
  oneRepetition,
  openHeadlessPage,
  outcomeOf,
} from '../support/browser/headlessPage';
import { tellCores } from '../support/browser/tellCores';

/** Two ways of scaling a picture make the network's points differ by less than this, px of 960. */
const samePointsWithinPx = 6;
/** ... and the peak of a repetition by less than this, degrees. */
const samePeakWithinDeg = 2;

/** Where hips, knees and ankles lie in a row of x, y and score. */
const legPoints = (['left', 'right'] as const).flatMap((side) =>
  (['hip', 'knee', 'ankle'] as const).flatMap((joint) => {
    const at = keypointNames.indexOf(`${side}_${joint}`) * 3;
    return [at, at + 1];
  }),
);

/** The time that a video element tells for the frame it shows after going to each of these times. */
function shownTimesMs(page: Page, wantedMs: number[]): Promise<number[]> {
  return page.evaluate(async (wanted) => {
    const file = (document.getElementById('video') as HTMLInputElement).files![0]!;
    const video = document.createElement('video');
    const nextFrame = () =>
      new Promise<number>((resolve) =>
        video.requestVideoFrameCallback((_, { mediaTime }) => resolve(mediaTime * 1000)),
      );
    const first = nextFrame();
    video.muted = true;
    video.src = URL.createObjectURL(file);
    await first; // Else it can be taken for the one that is sought.
    const shown: number[] = [];
    for (const timeMs of wanted) {
      const frame = nextFrame();
      video.currentTime = timeMs / 1000;
      shown.push(await frame);
    }
    return shown;
  }, wantedMs);
}

test.describe('a browser that only decodes video in a video element', () => {
  test('gives the same frames and the same repetition', { tag: '@network' }, async ({ page }) => {
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    // At half the frame rate, since going to each frame takes long.
    await page.evaluate((asked) => window.videoMaker.remake(asked), { ...oneRepetition, frameRateHz: 15 });
    const decoded = await measured(page);
    await page.evaluate(() => Reflect.deleteProperty(window, 'VideoDecoder'));
    const stepped = await measured(page);

    expect([decoded.pipeline.readBy, stepped.pipeline.readBy]).toEqual(['webcodecs', 'video element']);
    expect(stepped.recording.observed.timesMs).toEqual(decoded.recording.observed.timesMs);
    // A frame too early or too late would move the hips by up to 40 px while they rise.
    const hip = decoded.recording.observed.points.indexOf('right_hip');
    const differencesPx = decoded.recording.observed.timesMs.map((_, frame) => {
      const at = frame * decoded.recording.observed.points.length + hip;
      return Math.abs(stepped.recording.observed.yPx[at]! - decoded.recording.observed.yPx[at]!);
    });
    expect(Math.max(...differencesPx)).toBeLessThan(samePointsWithinPx);
    const peaksDeg = [decoded, stepped].map((recording) =>
      completeRepetitions(recording).map(({ ranges }) => ranges['knee-angle'].max!.value),
    );
    expect(peaksDeg.map((found) => found.length)).toEqual([1, 1]);
    peaksDeg[0]!.forEach((deg, i) =>
      expect(Math.abs(peaksDeg[1]![i]! - deg)).toBeLessThan(samePeakWithinDeg),
    );
  });
});

test.describe('frame times', () => {
  for (const startS of [0, 0.7]) {
    test(`are those of the video element where the first frame is at ${startS} s`, async ({ page }) => {
      await openHeadlessPage(page, fixture('short.mp4'));
      await addVideoMaker(page);
      await page.evaluate((asked) => window.videoMaker.remake(asked), { toS: 0.8, startS });
      const { timesMs } = await page.evaluate(() => window.videoMaker.trackMark());
      const some = [3, 11, 20].map((frame) => timesMs[frame]!);
      const shownMs = await shownTimesMs(
        page,
        some.map((timeMs) => timeMs + 5),
      );
      shownMs.forEach((timeMs, i) => expect(Math.abs(timeMs - some[i]!)).toBeLessThan(2));
    });
  }

  test('are those of the video element in a file whose frames are stored out of order', async ({ page }) => {
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    await page.evaluate(() => window.videoMaker.cutBytes(0.1));
    const { timesMs } = await page.evaluate(() => window.videoMaker.trackMark());
    await page.setInputFiles('#video', fixture('short.mp4'));
    const some = [1, 7, 15].map((frame) => timesMs[frame]!);
    const shownMs = await shownTimesMs(
      page,
      some.map((timeMs) => timeMs + 5),
    );
    shownMs.forEach((timeMs, i) => expect(Math.abs(timeMs - some[i]!)).toBeLessThan(2));
  });
});

test.describe('the pose worker', { tag: '@network' }, () => {
  test('holds no more tensors after a second recording than after the first', async ({ page }) => {
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    await page.evaluate(() => window.videoMaker.remake({ toS: 1 }));
    const first = await measured(page);
    const second = await measured(page);
    expect(first.pipeline.frames).toBe(30);
    expect(second.pipeline.tensors).toBe(first.pipeline.tensors);
  });

  test('finds the same joints in two threads as in one', async ({ page, context }) => {
    const tracks = [];
    for (const cores of [4, 1]) {
      const tried = cores === 4 ? page : await context.newPage();
      await tellCores(tried, cores);
      await openHeadlessPage(tried, fixture('short.mp4'));
      await addVideoMaker(tried);
      await tried.evaluate(() => window.videoMaker.remake({ toS: 0.5 }));
      tracks.push(await measured(tried));
    }
    expect(tracks.map(({ pipeline }) => pipeline.device.threads)).toEqual([2, 1]);
    const [inTwo, inOne] = tracks.map(({ recording }) => recording.observed);
    expect(tracks[0]!.pipeline.framesWithPerson).toBe(15);
    expect(inTwo!.xPx).toEqual(inOne!.xPx);
    expect(inTwo!.yPx).toEqual(inOne!.yPx);
  });

  test('sees in a closer look on the way what it sees in one afterwards', async ({ page }) => {
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    // So few frames that each is looked at on the way, and the same ones can be compared.
    await page.evaluate((asked) => window.videoMaker.remake(asked), { ...oneRepetition, frameRateHz: 7.5 });
    const [again, along] = [await measured(page, {}, 'closer'), await measured(page, {}, 'along')];
    expect(along.recording.observed.yPx).toEqual(again.recording.observed.yPx);
    const pairs = again.closer!.looks.flatMap((look) => {
      const same = along.closer!.looks.find(({ frame }) => frame === look.frame);
      return same?.mirrored && look.mirrored ? [{ look, same }] : [];
    });
    expect(pairs.length).toBeGreaterThan(5);
    for (const { look, same } of pairs) {
      expect(same.second).toEqual(look.second);
      const asidePx = legPoints.map((point) => Math.abs(same.mirrored![point]! - look.mirrored![point]!));
      expect(median(asidePx)).toBeLessThan(samePointsWithinPx);
    }
  });

  test('that cannot start is explained in a sentence', async ({ page }) => {
    await page.route('**/poseWorker*', (route) => route.abort());
    await openHeadlessPage(page, fixture('short.mp4'));
    await expect(outcomeOf(page)).rejects.toThrow('The pose worker could not start or has stopped');
  });

  test('whose weights cannot be loaded is explained in a sentence', async ({ page }) => {
    await page.route('**/models/**', (route) => route.abort());
    await openHeadlessPage(page, fixture('short.mp4'));
    await expect(outcomeOf(page)).rejects.toThrow(/pose network’s files could not be loaded/);
  });

  test('that crashes is explained in a sentence, and the next recording starts a new one', async ({
    page,
  }) => {
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    await page.evaluate(() => window.videoMaker.remake({ toS: 1 }));
    const broken = outcomeOf(page);
    broken.catch(() => undefined);
    await expect.poll(() => page.workers().length).toBeGreaterThan(0);
    await page.workers()[0]!.evaluate(() => {
      setTimeout(() => {
        throw new Error('out of memory');
      });
    });
    await expect(broken).rejects.toThrow(/has stopped .*out of memory/);
    expect((await measured(page)).pipeline.frames).toBe(30);
  });
});
