import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { parseRecording } from '#documents/recording/parseRecording';
import { addVideoMaker, fixture, openHeadlessPage } from '../support/browser/headlessPage';
import { runCommandLine } from '../support/browser/runCommandLine';

const short = fixture('short.mp4');
const good = ['--task', 'split-stance-sit-to-stand', '--side', 'right'];

// What is refused without a look at the video is in tests/unit/commands/refusals.test.ts.
test.describe('measure', { tag: '@network' }, () => {
  test('refuses a file that is not a video, in one line', async () => {
    const { code, stdout, stderr } = await runCommandLine('measure', [fixture('README.md'), ...good]);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(/^"README.md" is not a video/);
    expect([code, stdout]).toEqual([2, '']);
  });

  test('refuses a video without a person, in one line', async ({ page }) => {
    const outputPath = (name: string) => test.info().outputPath(name);
    await openHeadlessPage(page, short);
    await addVideoMaker(page);
    await page.evaluate(() => window.videoMaker.makeEmptyScene(12));
    const path = outputPath('room.webm');
    writeFileSync(path, Buffer.from(await page.evaluate(() => window.videoMaker.readBytes()), 'base64'));
    const { code, stdout, stderr } = await runCommandLine('measure', [path, ...good, '--model', 'lite']);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(/^No person was found in this video/);
    expect([code, stdout]).toEqual([2, '']);
  });

  test('prints a table and writes the recording document', async () => {
    const outputPath = (name = '') => test.info().outputPath(name);
    const out = outputPath('session.json');
    const words = [short, ...good, '--model', 'lite', '--limit', 'knee-inward=7', '--json', out];
    const { code, stdout, stderr } = await runCommandLine('measure', words);
    expect([code, stderr]).toEqual([0, '']);
    // Rise, top and lowering in seconds.
    expect(stdout.match(/^│ +[12] │.*\d\.\d \/ \d\.\d \/ \d\.\d s/gm)).toHaveLength(2);
    expect(stdout).toMatch(/282 frames at [\d.]+ frames a second \(model lite on /);
    const recording = parseRecording(readFileSync(out, 'utf8'));
    expect(recording.limits).toEqual({ 'knee-angle': { least: -10, most: 7 } });
    expect(recording.derived.repetitions).toHaveLength(2);
    expect(recording.observed.timesMs).toHaveLength(282);
    expect(recording.note).toBe('');
  });
});

test.describe('validate', { tag: '@network' }, () => {
  test('compares each clip with its truth', async () => {
    const outputPath = (name = '') => test.info().outputPath(name);
    const folder = outputPath('clips');
    mkdirSync(folder, { recursive: true });
    for (const name of ['short.mp4', 'short.truth.json']) copyFileSync(fixture(name), `${folder}/${name}`);
    copyFileSync(fixture('mpeg4-part2.mp4'), `${folder}/alone.mp4`);
    const out = outputPath('validation.json');
    const { code, stdout, stderr } = await runCommandLine('validate', [
      folder,
      '--model',
      'lite',
      '--json',
      out,
    ]);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain('alone.mp4 is skipped: there is no alone.truth.json next to it.');
    expect(stdout).toMatch(/short\.mp4 +│ +0° │ +2\/2 /);
    const { clips, summary } = JSON.parse(readFileSync(out, 'utf8'));
    expect(clips).toHaveLength(1);
    expect(clips[0]).toMatchObject({ clip: 'short.mp4', repsTrue: 2, repsFound: 2 });
    expect(clips[0].framesPerSecond).toBeGreaterThan(0);
    expect(clips[0].timingMaeS).toBeLessThan(0.5);
    expect(clips[0].repetitions.map(({ index }: { index: number }) => index)).toEqual([0, 1]);
    expect(clips[0].repetitions[1]).toMatchObject({ truePeakDeg: 21.10123, trueVerdict: 'out' });
    expect(summary).toMatchObject({ clips: 1, repsTrue: 2, repsFound: 2, clipsCountedRight: 1 });
  });
});
