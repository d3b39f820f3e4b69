import { expect, test } from '@playwright/test';
import {
  addVideoMaker,
  completeRepetitions,
  fixture,
  measured,
  openHeadlessPage,
  outcomeOf,
} from '../support/browser/headlessPage';

test.describe('a file that is not a usable video', () => {
  const files: [name: string, content: Buffer, sentence: RegExp][] = [
    [
      'notes.txt',
      Buffer.from('Seven repetitions, no pain.'),
      /"notes.txt" is not a video.*MP4, MOV, WebM or MKV/,
    ],
    ['empty.mp4', Buffer.alloc(0), /"empty.mp4" is empty \(0 bytes\)/],
    ['zeros.mp4', Buffer.alloc(50_000), /"zeros.mp4" is not a video/],
  ];
  for (const [name, buffer, sentence] of files) {
    test(`${name} ends in a sentence`, async ({ page }) => {
      await openHeadlessPage(page, fixture('short.mp4'));
      await page.setInputFiles('#video', { name, mimeType: 'video/mp4', buffer });
      const { value, problem } = await outcomeOf(page);
      expect(value).toBeNull();
      expect(problem).toMatch(sentence);
    });
  }

  test('a file cut off before its first frame is explained in a sentence', async ({ page }) => {
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    await page.evaluate(() => window.videoMaker.cutBytes(0.005));
    expect((await outcomeOf(page)).problem).toMatch(/cut off or damaged/);
  });

  test('a file with sound alone is explained in a sentence', async ({ page }) => {
    await openHeadlessPage(page, fixture('short.mp4'));
    await addVideoMaker(page);
    await page.evaluate(() => window.videoMaker.makeSoundOnly());
    expect((await outcomeOf(page)).problem).toMatch(/"sound.webm" holds sound only/);
  });

  test('a format that the browser does not know is named, with a way out', async ({ page }) => {
    await openHeadlessPage(page, fixture('mpeg4-part2.mp4'));
    expect((await outcomeOf(page)).problem).toMatch(/can't show the video's format \(mp4v[^)]*\).*H\.264/);
  });
});

test('a file cut off in the middle is measured as far as it goes, with a note', async ({ page }) => {
  await openHeadlessPage(page, fixture('short.mp4'));
  await addVideoMaker(page);
  await page.evaluate(() => window.videoMaker.cutBytes(0.5));
  const recording = await measured(page);
  const { frames } = recording.pipeline;
  expect(frames).toBeGreaterThan(100);
  expect(frames).toBeLessThan(200);
  expect(recording.shortfall).toContain(`${frames} of 282 frames`);
  expect(completeRepetitions(recording)).toHaveLength(1);
});

test('a file damaged in the middle is measured up to the damage, with a note', async ({ page }) => {
  await openHeadlessPage(page, fixture('short.mp4'));
  await addVideoMaker(page);
  await page.evaluate(() => window.videoMaker.spoilBytes(0.5, 0.7));
  const recording = await measured(page);
  const { frames } = recording.pipeline;
  expect(frames).toBeGreaterThan(100);
  expect(frames).toBeLessThan(200);
  expect(recording.shortfall).toContain(`${frames} of 282 frames`);
  expect(completeRepetitions(recording)).toHaveLength(1);
});

test('a video without a person is reported as having nobody in it', async ({ page }) => {
  await openHeadlessPage(page, fixture('short.mp4'));
  await addVideoMaker(page);
  await page.evaluate(() => window.videoMaker.makeEmptyScene(30));
  const recording = await measured(page);
  expect(recording.pipeline.frames).toBe(30);
  expect(recording.notes).toEqual([{ kind: 'no-person', framesWithPerson: 0, frames: 30 }]);
  expect(recording.recording.derived.repetitions).toEqual([]);
});
