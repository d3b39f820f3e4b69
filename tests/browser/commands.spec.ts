import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { parseRecording } from '#documents/recording/parseRecording';
import { addVideoMaker, fixture, openHeadlessPage } from '../support/browser/headlessPage';
import { runCommandLine } from '../support/browser/runCommandLine';

const short = fixture('short.mp4');
const good = ['--task', 'split-stance-sit-to-stand', '--side', 'right'];

test.describe('measure', () => {
  const refused: [words: string[], sentence: RegExp][] = [
    [[...good], /^The video is missing\. Usage: npm run -s measure/],
    [['nowhere.mp4', ...good], /^"nowhere.mp4" does not exist/],
    [['src', ...good], /^"src" is not a file/],
    [[short, short, ...good], /^One video at a time/],
    [[short, '--side', 'right'], /^--task is missing\. Give one of: split-stance-sit-to-stand, /],
    [[short, '--task', 'hopping', '--side', 'right'], /^--task hopping is not known/],
    [[short, '--task', 'single-leg-squat'], /^--side is missing\. Give one of: left, right\./],
    [[short, ...good, '--side', 'both'], /^--side both is not known/],
    [[short, ...good, '--model', 'huge'], /^--model huge is not known\. Give one of: lite, full, heavy\./],
    [[short, ...good, '--limit', 'knee=90'], /^--limit knee=90 must be from 1 to 30 degrees/],
    [[short, ...good, '--limit', 'hip=10'], /^--limit hip=10 is not known/],
    [[short, ...good, '--speed', '2'], /^Unknown option '--speed'\. Usage/],
    [[short, ...good, '--json'], /^Option '--json <value>' argument missing\. Usage/],
    [[short, ...good, '--json', 'nowhere/out.json'], /^--json can't be written: the folder/],
    [[fixture('README.md'), ...good], /^"README.md" is not a video/],
    [[fixture('mpeg4-part2.mp4'), ...good], /^This browser can't show the video's format/],
  ];
  for (const [words, sentence] of refused) {
    const told = words.map((word) => word.replace(/^\/.*\//, '')).join(' ');
    test(`refuses "${told}" in one line`, async () => {
      const { code, stdout, stderr } = await runCommandLine('measure', words);
      expect(stderr.trimEnd().split('\n')).toHaveLength(1);
      expect(stderr).toMatch(sentence);
      expect([code, stdout]).toEqual([2, '']);
    });
  }

  test('refuses a video without a person in one line', async ({ page }) => {
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

  test('prints a table and writes the session document', async () => {
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

test.describe('validate', () => {
  test('refuses a folder without clips, and what is no folder', async () => {
    const outputPath = (name = '') => test.info().outputPath(name);
    const empty = outputPath('empty');
    mkdirSync(empty, { recursive: true });
    for (const [folder, sentence] of [
      [empty, /holds no video with a \.truth\.json beside it/],
      ['nowhere', /^"nowhere" does not exist/],
      [short, /is not a folder/],
    ] as const) {
      const { code, stdout, stderr } = await runCommandLine('validate', [folder]);
      expect(stderr.trimEnd().split('\n')).toHaveLength(1);
      expect(stderr).toMatch(sentence);
      expect([code, stdout]).toEqual([2, '']);
    }
  });

  test('holds each clip against its truth', async () => {
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
    expect(stdout).toContain('alone.mp4 is skipped: there is no alone.truth.json beside it.');
    expect(stdout).toMatch(/short\.mp4 +│ +0° │ +2\/2 /);
    const { clips, summary } = JSON.parse(readFileSync(out, 'utf8'));
    expect(clips).toHaveLength(1);
    expect(clips[0]).toMatchObject({ clip: 'short.mp4', repsTrue: 2, repsFound: 2 });
    expect(clips[0].framesPerSecond).toBeGreaterThan(0);
    expect(clips[0].timingMaeS).toBeLessThan(0.5);
    expect(clips[0].repetitions.map(({ index }: { index: number }) => index)).toEqual([0, 1]);
    expect(clips[0].repetitions[1]).toMatchObject({ truePeakDeg: 21.10123, trueVerdict: 'out-of-line' });
    expect(summary).toMatchObject({ clips: 1, repsTrue: 2, repsFound: 2, clipsCountedRight: 1 });
  });
});

test.describe('bench', () => {
  test('refuses a part that it does not have', async () => {
    const { code, stdout, stderr } = await runCommandLine('bench', ['--only', 'nothing']);
    expect(stderr).toMatch(/^--only nothing is not known\. Give one of: recorded/);
    expect([code, stdout]).toEqual([2, '']);
  });
});

test.describe('remeasure', () => {
  test('derives the built-in example just as it is kept', async () => {
    const outputPath = (name = '') => test.info().outputPath(name);
    const path = outputPath('example.session.json');
    mkdirSync(outputPath(), { recursive: true });
    copyFileSync(fixture('example.session.json'), path);
    const { code, stdout } = await runCommandLine('remeasure', [path]);
    expect([code, stdout]).toEqual([0, `${path}: 6 repetitions.\n`]);
    expect(readFileSync(path, 'utf8')).toBe(readFileSync(fixture('example.session.json'), 'utf8'));
  });

  test('refuses what is no session document', async () => {
    const { code, stderr } = await runCommandLine('remeasure', [fixture('short.truth.json')]);
    expect(stderr).toMatch(/is not a session document that can be measured again/);
    expect(code).toBe(2);
  });
});
