import { expect, test, type Page } from '@playwright/test';
import { workingHeightPx } from '#device/pose/workingHeightPx';
import type { MeasuredRecording } from '#tools/headless/headlessPage';
import {
  addVideoMaker,
  completeRepetitions,
  fixture,
  measured,
  oneRepetition,
  openHeadlessPage,
} from '../support/browser/headlessPage';
import type { MarkedRecipe, MarkTrack, Recipe } from '../support/browser/videoMaker';
import { markedForS, markPath } from '../support/markPath';

async function trackMarked(page: Page, recipe: MarkedRecipe): Promise<MarkTrack> {
  await openHeadlessPage(page, fixture('short.mp4'));
  await addVideoMaker(page);
  return page.evaluate(async (asked) => {
    await window.videoMaker.makeMarked(asked);
    return window.videoMaker.trackMark();
  }, recipe);
}

/**
 * A mark that was blurred by a codec and scaled is found within this, px of the picture that the tracker gets. From one
 * frame to the next it moves by 8 px on average at 30 frames a second.
 */
const foundWithinPx = 1.5;

/** The mark is found in every frame, where it was drawn at that frame's time. */
function expectOnPath({ widthPx, heightPx, timesMs, xPx, yPx }: MarkTrack): void {
  const withinPx = foundWithinPx * Math.max(1, heightPx / workingHeightPx);
  const offPx = timesMs.map((timeMs, frame) => {
    const { x, y } = markPath((timeMs - timesMs[0]!) / 1000);
    return Math.hypot(xPx[frame]! - x * widthPx, yPx[frame]! - y * heightPx);
  });
  expect(Math.max(...offPx)).toBeLessThan(withinPx);
}

test.describe('each frame is read at its own time, upright and to scale', () => {
  const recipes: [name: string, recipe: MarkedRecipe][] = [
    ['in landscape', { size: { width: 1280, height: 720 } }],
    ['in a square', { size: { width: 720, height: 720 } }],
    ['in 4K', { size: { width: 3840, height: 2160 }, toS: 0.4 }],
    ['at 15 frames a second', { frameRateHz: 15 }],
    ['at 60 frames a second', { frameRateHz: 60 }],
    ...([90, 180, 270] as const).map((rotation): [string, MarkedRecipe] => [
      `where the file says to turn it by ${rotation} degrees`,
      { rotation },
    ]),
  ];
  for (const [name, recipe] of recipes) {
    test(name, async ({ page }) => {
      const track = await trackMarked(page, recipe);
      const { size = { width: 540, height: 960 }, frameRateHz = 30, toS = markedForS } = recipe;
      expect([track.widthPx, track.heightPx]).toEqual([size.width, size.height]);
      expect(track.timesMs).toHaveLength(Math.round(toS * frameRateHz));
      track.timesMs.forEach((timeMs, frame) =>
        expect(Math.abs(timeMs - (1000 * frame) / frameRateHz)).toBeLessThan(1),
      );
      expectOnPath(track);
    });
  }

  test('where frames are unevenly spaced', async ({ page }) => {
    const track = await trackMarked(page, { uneven: true });
    expect(track.timesMs).toHaveLength(96); // 144 less every third
    const gapsMs = track.timesMs
      .slice(1)
      .map((timeMs, i) => Math.round((timeMs - track.timesMs[i]!) / 10) * 10);
    expect(new Set(gapsMs)).toEqual(new Set([30, 70]));
    expectOnPath(track);
  });

  test('where the first frame is late', async ({ page }) => {
    const track = await trackMarked(page, { startS: 0.7 });
    expect(track.timesMs).toHaveLength(144);
    expect(track.timesMs[0]).toBeCloseTo(700, -1);
    expectOnPath(track);
  });
});

/** The peak of the one repetition, which must be there and complete. */
function onlyPeakDeg(recording: MeasuredRecording): number {
  const found = completeRepetitions(recording);
  expect(found).toHaveLength(1);
  const peak = found[0]!.ranges['knee-angle'].max;
  expect(peak).not.toBeNull();
  return peak!.value;
}

test.describe('the network reads the same movement', { tag: '@network' }, () => {
  /** One for all, since the network takes long to load. */
  let page: Page;
  let plain: MeasuredRecording;
  let plainPeakDeg: number;

  test.beforeAll(async ({ browser }) => {
    page = await browser.newPage();
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    plain = await measureRemade({});
    plainPeakDeg = onlyPeakDeg(plain);
  });
  test.afterAll(() => page.close());

  async function measureRemade(recipe: Recipe): Promise<MeasuredRecording> {
    await page.setInputFiles('#video', fixture('short.mp4'));
    await page.evaluate((asked) => window.videoMaker.remake(asked), { ...oneRepetition, ...recipe });
    return measured(page);
  }

  const bandsDeg = (recording: MeasuredRecording) =>
    [plain, recording].map((one) => completeRepetitions(one)[0]!.ranges['knee-angle'].max!.band);

  test('in the plain recording, without a note', () => {
    expect(plain.pipeline.frames).toBe(144);
    expect(plain.notes).toEqual([]);
    expect(plain.shortfall).toBeNull();
    expect(plainPeakDeg).toBeGreaterThan(3);
  });

  test('in 320 by 240 px', async () => {
    const recording = await measureRemade({ size: { width: 320, height: 240 } });
    expect(recording.recording.video).toMatchObject({ widthPx: 320, heightPx: 240 });
    // The whole person is 160 px tall: a pixel is a degree at the knee.
    expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(5);
  });

  test('at 10 frames a second within both errors, with a note on the low rate', async () => {
    const recording = await measureRemade({ frameRateHz: 10 });
    expect(recording.pipeline.frames).toBe(48);
    expect(recording.notes.map(({ kind }) => kind)).toEqual(['few-frames']);
    // A third of the frames is left of the moment of the peak, so single pictures decide, and how they were coded.
    // Errors that do not hang together add by their squares (JCGM 100:2008, 5.1.2).
    expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(Math.hypot(...bandsDeg(recording)));
  });

  test('of the person when somebody else passes behind', async () => {
    const recording = await measureRemade({ bystander: true });
    // Whoever passes right behind pulls the network's points about; the two bands still have to meet.
    const [own, others] = bandsDeg(recording);
    expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(own! + others!);
    expect(recording.notes).toEqual([]);
  });

  test('and measures nothing where the legs are out of the picture', async () => {
    const recording = await measureRemade({
      size: { width: 540, height: 580 },
      place: { x: 0, y: 0, width: 540, height: 960 },
    });
    const { repetitions } = recording.recording.derived;
    expect(repetitions.length).toBeGreaterThan(0);
    for (const { judgement } of repetitions) {
      expect(judgement).toMatchObject({
        verdict: 'not-measured',
        reason: 'out-of-picture',
        measures: [{ measure: 'knee-angle', extreme: null }],
      });
    }
    expect(recording.notes).toContainEqual({ kind: 'legs-not-seen', reason: 'out-of-picture' });
  });
});
