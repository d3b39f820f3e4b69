import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import {
  addVideoMaker,
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
    expect((await outcomeOf(page)).problem).toMatch(/can’t show the video’s format \(mp4v[^)]*\).*H\.264/);
  });
});

test.describe('a file that is broken in the middle, of which the joints are known', () => {
  const example = parseRecording(readFileSync(fixture('example.session.json'), 'utf8'));
  const faults: [name: string, spoil: (page: Page) => Promise<void>][] = [
    ['cut off', (page) => page.evaluate(() => window.videoMaker.cutBytes(0.4))],
    ['damaged', (page) => page.evaluate(() => window.videoMaker.spoilBytes(0.4, 0.6))],
  ];
  for (const [name, spoil] of faults) {
    test(`where it is ${name}, is measured up to there, with a note`, async ({ page }) => {
      await replayJoints(page, recordingTrack(example));
      await openHeadlessPage(page, fixture('example.mp4'));
      await addVideoMaker(page);
      await spoil(page);
      const { pipeline, shortfall, recording } = await measured(page, example.setup);
      expect(pipeline.frames).toBeGreaterThan(150);
      expect(pipeline.frames).toBeLessThan(400);
      expect(shortfall).toContain(`${pipeline.frames} of 617 frames`);
      const untilMs = recording.observed.timesMs.at(-1)!;
      const whole = example.derived.repetitions.filter(({ events }) => events.endMs < untilMs);
      expect(whole.length).toBeGreaterThan(1);
      const found = recording.derived.repetitions.filter(({ completeness }) => completeness === 'complete');
      expect(found).toHaveLength(whole.length);
    });
  }
});

test('a video without a person is reported as having nobody in it', { tag: '@network' }, async ({ page }) => {
  await openHeadlessPage(page, fixture('short.mp4'));
  await addVideoMaker(page);
  await page.evaluate(() => window.videoMaker.makeEmptyScene(30));
  const recording = await measured(page);
  expect(recording.pipeline.frames).toBe(30);
  expect(recording.notes).toEqual([{ kind: 'no-person', framesWithPerson: 0, frames: 30 }]);
  expect(recording.recording.derived.repetitions).toEqual([]);
});
