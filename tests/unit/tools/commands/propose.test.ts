import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { StageSession } from '#core/programme/stageCourse';
import { runInProcess } from '../../../support/runInProcess';
import { courseOf } from '../../../support/stageCourses';

const propose = (...words: string[]) => runInProcess(() => import('#tools/commands/propose'), words);

function file(content: unknown): string {
  const path = join(mkdtempSync(join(tmpdir(), 'overfoot-')), 'item.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

async function told(course: unknown): Promise<unknown> {
  const { code, stdout, stderr } = await propose(file(course));
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

const good = courseOf([{}, {}, {}]);

describe('propose FILE.json', () => {
  it('prints a step up with what it rests on', async () => {
    expect(await told(good)).toEqual({
      proposal: 'step-up',
      reasons: [
        'Pain during the sessions: 2, 2 and 2, limit 3. Next-day pain: 1, 1 and 1.',
        'Quality, as the share expected in line (and that reached with a chance of 9 in 10): ' +
          '90 % (70 %), 90 % (70 %) and 90 % (70 %).',
        'Done: 100 %, 100 % and 100 % of the plan. Effort of the last session: 6 of 10.',
        'Repetitions: 20. The next stage comes after 20.',
      ],
    });
  });

  it('prints how many repetitions more are proposed', async () => {
    const course = courseOf([{}, {}, { repetitions: 14 }]);
    expect(await told(course)).toMatchObject({ proposal: 'more', repetitions: 16 });
  });

  it('prints why it holds', async () => {
    expect(await told(courseOf([{}, {}, { event: 'gave-way' }]))).toEqual({
      proposal: 'hold',
      reasons: ['Day 4: the knee gave way.'],
    });
  });

  it('prints what that is in the stages, and whether the device may do it', async () => {
    const stage = { exercise: 'single-leg-sit-to-stand', id: 'seat-46' };
    expect(await told({ ...good, stage })).toMatchObject({
      proposal: 'step-up',
      next: 'Proposed: stage 4 of 4. Seat 42 cm. It begins with 10 repetitions.',
      appliesAtHome: false,
    });
    const more = courseOf([{}, {}, { repetitions: 14 }]);
    expect(await told({ ...more, stage, autoStep: 'within-plan' })).toMatchObject({ appliesAtHome: true });
  });

  it("goes through a practice's own stages", async () => {
    const stages = ['One.', 'Two.'].map((words, i) => ({
      id: `own-${i}`,
      words,
      start: 6,
      upTo: { min: 9, max: 9 },
    }));
    const stage = { exercise: 'single-leg-sit-to-stand', id: 'own-0', stages };
    expect(await told({ ...good, stage })).toMatchObject({
      next: 'Proposed: stage 2 of 2. Two. It begins with 6 repetitions.',
    });
  });

  it('draws its lines where the file says', async () => {
    expect(await told({ ...good, thresholds: { mostEffort: 5 } })).toMatchObject({ proposal: 'stay' });
  });

  it('lists the thresholds with their sources', async () => {
    const { code, stdout } = await propose('--thresholds');
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ sessions: { usual: 3, source: 'our choice, no source' } });
  });

  it('takes an item without sessions', async () => {
    expect(await told(courseOf([]))).toMatchObject({ proposal: 'stay' });
  });
});

const place = (where: string) => new RegExp(`does not hold the sessions of an item \\(${where}`);
const second = (session: Record<string, unknown>) => courseOf([{}, session as Partial<StageSession>, {}]);

const refused: [why: string, content: unknown, sentence: RegExp][] = [
  ['text', 'all good', /is not JSON/],
  ['nothing', '', /is not JSON/],
  ['a list', [], place('Invalid input: expected object')],
  ['no sessions', { ...good, sessions: undefined }, place('sessions: ')],
  ['no limit', { ...good, limit: undefined }, place('limit: ')],
  ['a limit above 10', { ...good, limit: 11 }, place('limit: ')],
  ['usual pain below 0', { ...good, usualPain: -1 }, place('usualPain: ')],
  ['a swelling rule that does not exist', { ...good, swellingRule: 'ice' }, place('swellingRule: ')],
  ['fewer repetitions at most than at least', { ...good, upTo: { min: 20, max: 15 } }, place('upTo.max: ')],
  ['half a repetition', { ...good, upTo: { min: 9.5, max: 15 } }, place('upTo.min: ')],
  ['a threshold that does not exist', { ...good, thresholds: { ice: 2 } }, place('thresholds: ')],
  ['a threshold out of range', { ...good, thresholds: { sessions: 0 } }, place('thresholds.sessions: ')],
  [
    'a stage that does not exist',
    { ...good, stage: { exercise: 'lateral-step-down', id: 'step-90' } },
    place('stage.id: the stages are step-10-hand, '),
  ],
  ['a field that is not known', { ...good, aboveUsual: 2 }, place('Unrecognized key: "aboveUsual"')],
  ['one of a session', second({ note: 'sore' }), place('sessions.1: Unrecognized key: "note"')],
  ['one of the repetitions', { ...good, upTo: { min: 1, max: 2, step: 2 } }, place('upTo: Unrecognized key')],
  ['pain above 10', second({ painDuring: 10.5 }), place('sessions.1.painDuring: ')],
  ['pain below 0', second({ painBefore: -1 }), place('sessions.1.painBefore: ')],
  ['next-day pain above 10', second({ worstNextDay: 11 }), place('sessions.1.worstNextDay: ')],
  ['no next-day pain', second({ worstNextDay: undefined }), place('sessions.1.worstNextDay: ')],
  ['pain in words', second({ painDuring: '2' }), place('sessions.1.painDuring: ')],
  ['pain during that is null', second({ painDuring: null }), place('sessions.1.painDuring: ')],
  ['a share above 1', second({ doneShare: 1.01 }), place('sessions.1.doneShare: ')],
  ['a share in percent', second({ expectedShare: 90 }), place('sessions.1.expectedShare: ')],
  ['a share below 0', second({ measuredShare: -0.1 }), place('sessions.1.measuredShare: ')],
  ['a lower tenth above 1', second({ lowerTenthShare: 7 }), place('sessions.1.lowerTenthShare: ')],
  ['effort above 10', second({ effort: 11 }), place('sessions.1.effort: ')],
  ['swelling that does not exist', second({ swelling: 'some' }), place('sessions.1.swelling: ')],
  ['an event that does not exist', second({ event: 'slept' }), place('sessions.1.event: ')],
  ['a drift in degrees', second({ driftInward: 3 }), place('sessions.1.driftInward: ')],
  ['no repetitions', second({ repetitions: 0 }), place('sessions.1.repetitions: ')],
  ['half a day', second({ day: 1.5 }), place('sessions.1.day: ')],
  [
    'days out of order',
    second({ day: 9 }),
    place('sessions.2.day: day 4 comes after day 9; the oldest session is the first\\)\\.$'),
  ],
];

describe('propose refuses in one line', () => {
  it.each(refused)('%s', async (_, content, sentence) => {
    const { code, stdout, stderr } = await propose(file(content));
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr.trimEnd()).toMatch(sentence);
    expect([code, stdout]).toEqual([2, '']);
  });

  it.each([
    [[], /^The file is missing\. Usage: npm run -s propose/],
    [['nowhere.json'], /^"nowhere.json" does not exist/],
    [['src'], /^"src" is not a file/],
    [['a.json', 'b.json'], /^One file at a time/],
    [['--sure', '80'], /^Unknown option '--sure'/],
  ])('%j', async (words, sentence) => {
    const { code, stdout, stderr } = await propose(...words);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(sentence);
    expect([code, stdout]).toEqual([2, '']);
  });
});
