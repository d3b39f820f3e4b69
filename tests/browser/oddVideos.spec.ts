import { expect, test, type Page } from '@playwright/test';
import type { MeasuredRecording } from '#tools/headless/headlessPage';
import {
  addVideoMaker,
  completeRepetitions,
  fixture,
  measured,
  openHeadlessPage,
} from '../support/browser/headlessPage';
import type { Recipe } from '../support/browser/videoMaker';

/** The second repetition of fixtures/short.mp4, with the quiet sitting around it, seconds. */
const oneRepetition = { fromS: 4.5, toS: 9.3 };

/** The network's small model reads the same person within this when a picture is stored anew or stands elsewhere, degrees. */
const sameWithinDeg = 2.5;

async function measureRemade(
  page: Page,
  recipe: Recipe,
  setup: Parameters<typeof measured>[1] = {},
): Promise<MeasuredRecording> {
  await openHeadlessPage(page, fixture('short.mp4'));
  await addVideoMaker(page);
  await page.evaluate((asked) => window.videoMaker.remake(asked), { ...oneRepetition, ...recipe });
  return measured(page, setup);
}

/** The peak of the one repetition, which must be there and complete. */
function onlyPeakDeg(recording: MeasuredRecording): number {
  const found = completeRepetitions(recording);
  expect(found).toHaveLength(1);
  const peak = found[0]!.ranges['knee-angle'].max;
  expect(peak).not.toBeNull();
  return peak!.value;
}

test.describe('the same movement in odd videos', () => {
  let plain: MeasuredRecording;
  let plainPeakDeg: number;

  test.beforeAll(async ({ browser }) => {
    const page = await browser.newPage();
    plain = await measureRemade(page, {});
    plainPeakDeg = onlyPeakDeg(plain);
    await page.close();
  });

  test('is found once in the plain part', () => {
    expect(plain.pipeline.frames).toBe(144);
    expect(plain.notes).toEqual([]);
    expect(plain.shortfall).toBeNull();
    expect(plainPeakDeg).toBeGreaterThan(3);
  });

  const sizes: [name: string, recipe: Recipe, toleranceDeg: number][] = [
    ['landscape', { size: { width: 1280, height: 720 } }, sameWithinDeg],
    ['square', { size: { width: 720, height: 720 } }, sameWithinDeg],
    // The whole person is 160 px tall: a pixel is a degree at the knee.
    ['320x240', { size: { width: 320, height: 240 } }, 2 * sameWithinDeg],
  ];
  for (const [name, recipe, toleranceDeg] of sizes) {
    test(`reads the same in ${name}`, async ({ page }) => {
      const recording = await measureRemade(page, recipe);
      expect(recording.recording.video).toMatchObject({
        widthPx: recipe.size!.width,
        heightPx: recipe.size!.height,
      });
      expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(toleranceDeg);
    });
  }

  for (const frameRateHz of [15, 60]) {
    test(`reads the same at ${frameRateHz} frames a second`, async ({ page }) => {
      const recording = await measureRemade(page, { frameRateHz });
      expect(recording.pipeline.frames).toBeCloseTo(4.8 * frameRateHz, -0.5);
      expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(sameWithinDeg);
      expect(recording.notes).toEqual([]);
    });
  }

  test('says at 10 frames a second that short peaks may be missed, and differs by no more than the error of both', async ({
    page,
  }) => {
    const recording = await measureRemade(page, { frameRateHz: 10 });
    expect(recording.pipeline.frames).toBe(48);
    expect(recording.notes.map(({ kind }) => kind)).toEqual(['few-frames']);
    // The peak stands in a moment of which a third of the frames is left, so how much of it is seen hangs on single
    // pictures, and with them on how the processor codes them: 2.5 degrees were held on one machine, not on another.
    // Errors that do not hang together add by their squares (JCGM 100:2008, 5.1.2).
    const bandsDeg = [plain, recording].map(
      (one) => completeRepetitions(one)[0]!.ranges['knee-angle'].max!.band,
    );
    expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(Math.hypot(...bandsDeg));
  });

  test('reads the same where the frames come unevenly', async ({ page }) => {
    const recording = await measureRemade(page, { uneven: true });
    const { timesMs } = recording.recording.observed;
    expect(timesMs).toHaveLength(96); // 144 less every third
    const gapsMs = timesMs.slice(1).map((timeMs, i) => Math.round((timeMs - timesMs[i]!) / 10) * 10);
    expect(new Set(gapsMs)).toEqual(new Set([30, 70]));
    expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(sameWithinDeg);
  });

  for (const rotation of [90, 180, 270] as const) {
    test(`reads the same where the file says to turn it by ${rotation} degrees`, async ({ page }) => {
      const recording = await measureRemade(page, { rotation });
      expect(recording.recording.video).toMatchObject({ widthPx: 540, heightPx: 960 });
      expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(sameWithinDeg);
    });
  }

  test('keeps its own times where the first frame comes late', async ({ page }) => {
    const recording = await measureRemade(page, { startS: 0.7 });
    expect(recording.recording.observed.timesMs[0]).toBeCloseTo(700, -1);
    const [late] = completeRepetitions(recording);
    const [early] = completeRepetitions(plain);
    expect(late!.events.seatOffMs! - early!.events.seatOffMs!).toBeCloseTo(700, -2);
  });

  test('stays with the person when somebody else passes behind', async ({ page }) => {
    const recording = await measureRemade(page, { bystander: true });
    // Whoever passes right behind pulls the network's points about; the two bands still have to meet.
    const bandsDeg = [plain, recording].map(
      (one) => completeRepetitions(one)[0]!.ranges['knee-angle'].max!.band,
    );
    expect(Math.abs(onlyPeakDeg(recording) - plainPeakDeg)).toBeLessThan(bandsDeg[0]! + bandsDeg[1]!);
    expect(recording.notes).toEqual([]);
  });

  test('says that the side is doubtful where the other one was chosen', async ({ page }) => {
    const recording = await measureRemade(page, {}, { side: 'left' });
    expect(recording.notes).toContainEqual({ kind: 'side-doubtful', side: 'left' });
    expect(recording.recording.setup.side).toBe('left');
  });

  test('is found with the legs out of the picture, but not measured', async ({ page }) => {
    const recording = await measureRemade(page, {
      size: { width: 540, height: 580 },
      place: { x: 0, y: 0, width: 540, height: 960 },
    });
    const { repetitions } = recording.recording.derived;
    expect(repetitions.length).toBeGreaterThan(0);
    for (const { judgement } of repetitions) {
      expect(judgement).toMatchObject({
        ...{ verdict: 'not-measured', reason: 'out-of-picture' },
        measures: [{ measure: 'knee-angle', extreme: null }],
      });
    }
    expect(recording.notes).toContainEqual({ kind: 'legs-not-seen', reason: 'out-of-picture' });
  });
});

test('reads a 4K video', async ({ page }) => {
  const recording = await measureRemade(page, { toS: 4.9, size: { width: 3840, height: 2160 } });
  expect(recording.recording.video).toMatchObject({ widthPx: 3840, heightPx: 2160 });
  expect(recording.pipeline.framesWithPerson).toBe(recording.pipeline.frames);
  // The figure's hips are 580 of 960 px down, and so are they in 2160.
  const { points, yPx } = recording.recording.observed;
  expect(Math.abs(yPx[points.indexOf('right_hip')]! - (580 / 960) * 2160)).toBeLessThan(100);
});
