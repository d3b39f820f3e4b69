import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test, type BrowserContext, type Page } from '@playwright/test';
import { recordingTypes } from '#device/camera/pickRecordingType';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import { fixture } from '../../support/browser/headlessPage';
import {
  beginClock,
  findClock,
  openStoragePage,
  secondsLost,
  type FoundClock,
} from '../../support/browser/recordedClock';
import { refuseStorage } from '../../support/browser/refuseStorage';
import { smallSetStart } from '../../support/smallSet';

/** No more of a recording may be lost, seconds. */
const mostLostS = 2;

const start = { ...smallSetStart(), widthPx: 640, heightPx: 480 };

let folder: string;
const opened: BrowserContext[] = [];

test.beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'overfoot-profile-'));
});
test.afterEach(async () => {
  for (const context of opened.splice(0)) await context.close().catch(() => undefined);
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** A browser with a profile on the disk, which outlasts it. */
async function openBrowser(baseURL: string): Promise<{ context: BrowserContext; page: Page }> {
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: findBrowser(),
    args: browserSwitches,
    baseURL,
  });
  opened.push(context);
  return { context, page: context.pages()[0] ?? (await context.newPage()) };
}

/** Ends the browser as a dead battery does: nothing of it gets to say goodbye. */
async function killBrowser(context: BrowserContext): Promise<void> {
  const recording = await context.browser()!.newBrowserCDPSession();
  const { processInfo } = await recording.send('SystemInfo.getProcessInfo');
  const { id } = processInfo.find(({ type }) => type === 'browser')!;
  const gone = new Promise((resolve) => context.once('close', resolve));
  process.kill(id, 'SIGKILL');
  await gone;
}

type Kill = (context: BrowserContext, page: Page) => Promise<void>;

/** Each at another moment between two pieces of the video. */
const kills: [name: string, afterMs: number, kill: Kill, opensAgain: boolean][] = [
  ['tab is closed without a word', 4000, (_, page) => page.close({ runBeforeUnload: false }), false],
  [
    'tab crashes',
    3300,
    async (context, page) => {
      const recording = await context.newCDPSession(page);
      const crashed = page.waitForEvent('crash');
      void recording.send('Page.crash').catch(() => undefined);
      await crashed;
    },
    false,
  ],
  ['browser is killed', 2700, (context) => killBrowser(context), true],
];

function expectLittleLost(found: FoundClock, endMs: number, how: string): void {
  const lost = {
    videoS: secondsLost(found.lastPictureMs, endMs),
    jointsS: secondsLost(found.lastRowMs, endMs),
  };
  const losses = Object.entries(lost).map(([name, seconds]) => `${name} ${seconds.toFixed(2)}`);
  test.info().annotations.push({ type: `seconds lost: ${how}`, description: losses.join(', ') });
  process.stdout.write(`    seconds lost where the ${how} (${found.codec}): ${losses.join(', ')}\n`);
  expect(lost.videoS).toBeLessThan(mostLostS);
  expect(lost.jointsS).toBeLessThan(mostLostS);
}

for (const [how, afterMs, kill, opensAgain] of kills) {
  test(`where the ${how} while a set is recorded, at most ${mostLostS} s are lost`, async ({ baseURL }) => {
    const { context, page } = await openBrowser(baseURL!);
    await openStoragePage(page);
    await beginClock(page, { start });
    await page.waitForTimeout(afterMs);
    expect(await page.evaluate(() => window.clockProblems)).toEqual([]);
    await kill(context, page);
    const endMs = Date.now();
    const next = opensAgain ? (await openBrowser(baseURL!)).page : await context.newPage();
    await openStoragePage(next);
    const found = await findClock(next);
    expectLittleLost(found, endMs, how);
    // All that is there can be read, and it is the recording, not its first moment alone.
    expect(found.pictures).toBeGreaterThanOrEqual(found.expectedPictures - 1);
    expect(found.durationMs).toBeGreaterThan(afterMs - mostLostS * 1000);
    expect(found.rows).toBeGreaterThan(10);
  });
}

for (const mimeType of recordingTypes.filter((type) => type.includes('codecs='))) {
  test(`${mimeType} that is cut off within a picture can still be read`, async ({ page }) => {
    await openStoragePage(page);
    const isRecorded = await page.evaluate((type) => MediaRecorder.isTypeSupported(type), mimeType);
    test.skip(!isRecorded, 'This browser does not record it.');
    await beginClock(page, { start, mimeType });
    // By size, not by time: a machine without a graphics card drops most pictures while it encodes VP8. Large enough
    // for the shortest cut to hold the first fragment of an MP4 file whole.
    await expect.poll(() => videoBytes(page), { timeout: 30_000 }).toBeGreaterThan(1_000_000);
    await page.evaluate(() => window.stopClock());
    const shares = [1, 0.9, 0.6543, 0.4321, 0.3];
    const read = await page.evaluate(async (shares) => {
      const { openRepository, openFrameSource } = window.storagePage;
      const { repository } = await openRepository();
      const { name } = (await repository.videos.list())[0]!;
      const file = (await repository.videos.read(name))!;
      const results: { frames: number; expected: number; durationMs: number; lastMs: number }[] = [];
      for (const share of shares) {
        const cut = new File([file.slice(0, Math.floor(file.size * share))], name, { type: file.type });
        const source = await openFrameSource(cut);
        let [frames, lastMs] = [0, -1];
        for await (const { picture, timeMs } of source.frames(240)) {
          picture.close();
          frames++;
          lastMs = timeMs;
        }
        results.push({
          frames,
          lastMs,
          expected: source.facts.expectedFrames,
          durationMs: source.facts.durationMs,
        });
        source.close();
      }
      return results;
    }, shares);
    const [whole] = read;
    expect(whole!.frames).toBeGreaterThan(8);
    expect(whole!.durationMs).toBeGreaterThan(500);
    read.forEach(({ frames, expected, durationMs, lastMs }, index) => {
      // Bytes and frames do not go quite together.
      expect(frames).toBeGreaterThan(whole!.frames * (shares[index]! - 0.25));
      if (mimeType.startsWith('video/mp4')) return; // It announces pictures ahead, and may end before they come.
      expect(frames).toBe(expected);
      expect(durationMs).toBeGreaterThanOrEqual(lastMs);
      expect(durationMs).toBeLessThan(lastMs + 200);
    });
    expect(read.map(({ frames }) => frames)).toEqual(
      read.map(({ frames }) => frames).toSorted((a, b) => b - a),
    );
  });
}

test('a set that another tab is recording is not offered as interrupted', async ({ context, page }) => {
  await openStoragePage(page);
  await beginClock(page, { start });
  const other = await context.newPage();
  await openStoragePage(other);
  const interrupted = () =>
    other.evaluate(async () => {
      const { repository } = await window.storagePage.openRepository();
      return (await repository.interrupted()).found.map(({ start }) => start.id);
    });
  expect(await interrupted()).toEqual([]);
  await page.close();
  await expect.poll(interrupted).toEqual([start.id]);
});

test('an interrupted set is kept as a session that waits for its video', async ({ context, page }) => {
  await openStoragePage(page);
  await beginClock(page, { start });
  await page.waitForTimeout(2500);
  await page.close();
  const next = await context.newPage();
  await openStoragePage(next);
  const kept = await next.evaluate(async (id) => {
    const { openRepository, recoverInterrupted, openFrameSource } = window.storagePage;
    const { repository } = await openRepository();
    const recording = await recoverInterrupted(id, { repository, openFrameSource });
    const { found } = await repository.interrupted();
    const facts = (await repository.recordings.find(id))?.facts;
    return { video: recording.video, frames: recording.observed.timesMs.length, facts, left: found.length };
  }, start.id);
  expect(kept.left).toBe(0);
  expect(kept.frames).toBeGreaterThan(20);
  expect(kept.video).toMatchObject({ widthPx: 640, heightPx: 480 });
  expect(kept.video.durationMs).toBeGreaterThan(1000);
  expect(kept.facts).toMatchObject({
    fromVideo: 'waiting',
    video: `${start.id}.webm`,
  });
});

for (const isPrivate of [false, true]) {
  const where = isPrivate ? 'a private window' : 'an ordinary window';
  test(`without room left in ${where}, recording ends with a sentence and what was saved stays`, async ({
    browser,
    baseURL,
  }) => {
    const page = isPrivate
      ? await (await browser.newContext({ baseURL: baseURL! })).newPage()
      : (await openBrowser(baseURL!)).page;
    await openStoragePage(page);
    const recording = await page.context().newCDPSession(page);
    const { origin } = new URL(baseURL!);
    await beginClock(page, { start });
    await expect.poll(() => videoBytes(page)).toBeGreaterThan(0);
    // Everything that is used by now, and a little more.
    const usedBytes = await page.evaluate(async () => (await navigator.storage.estimate()).usage!);
    await recording.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usedBytes + 30_000 });
    await expect
      .poll(() => page.evaluate(() => window.clockProblems), { timeout: 30_000 })
      .toContainEqual(expect.stringMatching(/could not be kept.*storage is full\. Delete/));
    const { bytes, problem } = await page.evaluate(() => window.stopClock());
    expect(problem).toMatch(/What was kept until then stays.*storage is full/);
    await recording.send('Storage.overrideQuotaForOrigin', { origin });
    expect(await videoBytes(page)).toBe(bytes);
    expect(bytes).toBeGreaterThan(0);
    await page.context().close();
  });
}

/** Bytes of all videos that are kept. */
function videoBytes(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const videos = await (await window.storagePage.openRepository()).repository.videos.list();
    return videos.reduce((sum, { bytes }) => sum + bytes, 0);
  });
}

test('where the browser refuses storage, work continues and the screen says that nothing is kept', async ({
  baseURL,
}) => {
  refuseStorage(folder);
  const { page } = await openBrowser(baseURL!);
  await openStoragePage(page);
  const opened = await page.evaluate(async () => {
    const { repository, problem } = await window.storagePage.openRepository();
    await repository.plans.save('plan-7', '{}');
    return {
      lasting: repository.lasting,
      problem: problem?.message,
      plan: await repository.plans.find('plan-7'),
    };
  });
  expect(opened.lasting).toEqual({ records: false, videos: false });
  expect(opened.problem).toMatch(/refuses to keep anything.*Allow site data.*reload/);
  expect(opened.plan).toBe('{}');
});

test('measuring again from the video continues from where the page was killed', async ({ context, page }) => {
  const example = parseRecording(readFileSync(fixture('example.session.json'), 'utf8'));
  await replayJoints(context, recordingTrack(example), 20); // As long as a network would take for a picture.
  await openStoragePage(page);
  // The example stands for a set that was tracked live.
  await page.evaluate(async (start) => {
    const { repository } = await window.storagePage.openRepository();
    const [recording, video] = await Promise.all(
      ['session.json', 'mp4'].map((ending) => fetch(`../../example/example.${ending}`)),
    );
    const set = await repository.beginSet({ ...start, videoType: 'video/mp4' }, () => undefined);
    await set.video!.write(await video!.blob());
    await set.endVideo();
    await set.finish({ ...(await recording!.json()), id: start.id }, 'waiting', null);
  }, start);
  const measureAgain = (where: Page, stopAfter: number) =>
    where.evaluate(
      async ({ id, stopAfter }) => {
        const { openRepository, createBackgroundMeasuring, createTracker, openFrameSource, poseWeights } =
          window.storagePage;
        const { repository } = await openRepository();
        const parts = {
          repository,
          openFrameSource,
          createTracker,
          weights: poseWeights,
          model: 'lite',
        } as const;
        const background = createBackgroundMeasuring(parts);
        const progress: number[] = [];
        const enough = new Promise<void>((resolve) => {
          background.store.subscribe(({ current }) => {
            if (current?.progress) progress.push(current.progress.framesDone);
            if ((progress.at(-1) ?? 0) >= stopAfter) resolve();
          });
        });
        background.look();
        await Promise.race([enough, background.whenIdle()]);
        const kept = await repository.recordings.find(id);
        return {
          first: progress[0]!,
          last: progress.at(-1)!,
          kept,
          problems: background.store.getState().problems,
        };
      },
      { id: start.id, stopAfter },
    );

  const before = await measureAgain(page, 150);
  expect(before).toMatchObject({ first: 1, problems: {}, kept: { facts: { fromVideo: 'waiting' } } });
  await page.close();
  const next = await context.newPage();
  await openStoragePage(next);
  const after = await measureAgain(next, Infinity);
  const { recording, facts } = after.kept!;
  process.stdout.write(`    tracked to frame ${before.last}, killed, gone on with frame ${after.first}\n`);
  expect(after.problems).toEqual({});
  // Rows are kept every half a second; a fast machine tracks some 60 frames in that time.
  expect(after.first).toBeGreaterThan(before.last - 100);
  expect(after.last).toBe(617);
  expect(facts.fromVideo).toBe('done');
  expect(recording.observed.timesMs).toHaveLength(617);
  expect(recording.observed.model.size).toBe('lite');
  expect(recording.derived.repetitions).toHaveLength(before.kept!.recording.derived.repetitions.length);
});
