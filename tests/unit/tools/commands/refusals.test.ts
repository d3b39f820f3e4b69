import { copyFileSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { runInProcess } from '../../../support/runInProcess';

const commands = {
  measure: () => import('#tools/commands/measure'),
  validate: () => import('#tools/commands/validate'),
  bench: () => import('#tools/commands/bench'),
  remeasure: () => import('#tools/commands/remeasure'),
};
const fixture = (name: string) => join(projectRoot, 'fixtures', name);
const temporary = () => mkdtempSync(join(tmpdir(), 'overfoot-'));

const short = fixture('short.mp4');
const good = ['--task', 'split-stance-sit-to-stand', '--side', 'right'];

const refused: [command: keyof typeof commands, words: string[], sentence: RegExp][] = [
  ['measure', [...good], /^The video is missing\. Usage: npm run -s measure/],
  ['measure', ['nowhere.mp4', ...good], /^"nowhere.mp4" does not exist/],
  ['measure', ['src', ...good], /^"src" is not a file/],
  ['measure', [short, short, ...good], /^One video at a time/],
  ['measure', [short, '--side', 'right'], /^--task is missing\. Give one of: split-stance-sit-to-stand, /],
  ['measure', [short, '--task', 'hopping', '--side', 'right'], /^--task hopping is not known/],
  ['measure', [short, '--task', 'single-leg-squat'], /^--side is missing\. Give one of: left, right\./],
  ['measure', [short, ...good, '--side', 'both'], /^--side both is not known/],
  [
    'measure',
    [short, ...good, '--model', 'huge'],
    /^--model huge is not known\. Give one of: lite, full, heavy\./,
  ],
  ['measure', [short, ...good, '--limit', 'knee=90'], /^--limit knee=90 must be from 1 to 30 degrees/],
  ['measure', [short, ...good, '--limit', 'hip=10'], /^--limit hip=10 is not known/],
  ['measure', [short, ...good, '--speed', '2'], /^Unknown option '--speed'\. Usage/],
  ['measure', [short, ...good, '--json'], /^Option '--json <value>' argument missing\. Usage/],
  ['measure', [short, ...good, '--json', 'nowhere/out.json'], /^--json can't be written: the folder/],
  ['validate', [temporary()], /holds no video with a \.truth\.json next to it/],
  ['validate', ['nowhere'], /^"nowhere" does not exist/],
  ['validate', [short], /is not a folder/],
  ['bench', ['--only', 'nothing'], /^--only nothing is not known\. Give one of: recorded/],
  ['remeasure', [fixture('short.truth.json')], /is not a recording document that can be measured again/],
];

describe('a command that can’t do what is asked', () => {
  it.each(refused)('says so in one line: %s %j', async (command, words, sentence) => {
    const { code, stdout, stderr } = await runInProcess(commands[command], words);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(sentence);
    expect([code, stdout]).toEqual([2, '']);
  });
});

describe('remeasure', () => {
  it('derives the built-in example just as it is kept', async () => {
    const kept = fixture('example.session.json');
    const path = join(temporary(), 'example.session.json');
    copyFileSync(kept, path);
    const { code, stdout } = await runInProcess(commands.remeasure, [path]);
    expect([code, stdout]).toEqual([0, `${path}: 6 repetitions.\n`]);
    expect(readFileSync(path, 'utf8')).toBe(readFileSync(kept, 'utf8'));
  });
});
