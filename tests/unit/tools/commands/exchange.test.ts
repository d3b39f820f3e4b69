import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import { runInProcess } from '../../../support/runInProcess';
import { smallPlan } from '../../../support/smallPlan';
import { smallRecording } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';

const exchange = (...words: string[]) => runInProcess(() => import('#tools/commands/exchange'), words);
const folder = mkdtempSync(join(tmpdir(), 'overfoot-'));
function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}
const session = file('session.json', smallSession());
const plan = file('plan.json', smallPlan({ patient: 'invented-heron' }));
const heron = {
  ...newPatient('invented-heron', '44444444-4444-4444-8444-444444444444', '2026-04-01T08:00:00.000Z'),
  painfulSide: 'left',
  goals: 'To hike again.',
};
const patient = file('patient.json', heron);
const recording = file('recording.json', smallRecording());

describe('exchange FILE.json ...', () => {
  it('makes a bundle, and reads it back', async () => {
    const made = await exchange(session, plan, recording);
    expect([made.code, made.stderr]).toEqual([0, '']);
    expect(JSON.parse(made.stdout)).toMatchObject({ resourceType: 'Bundle', type: 'collection' });
    const read = await exchange(file('bundle.json', made.stdout));
    expect([read.code, read.stderr]).toEqual([0, '']);
    expect(JSON.parse(read.stdout)).toMatchObject({
      patient: 'invented-heron',
      note: 'An invented patient.',
      plans: [{ id: smallPlan().id }],
      sessions: [
        { id: smallSession().id, sets: [{ result: { repetitions: 2, peak: null } }, { result: null }] },
      ],
    });
  });

  it('takes a patient document, by itself or with what was done', async () => {
    for (const words of [[patient], [patient, session, recording]]) {
      const made = await exchange(...words);
      expect([made.code, made.stderr]).toEqual([0, '']);
      const read = await exchange(file('with-patient.json', made.stdout));
      expect(read.stderr).toBe('');
      expect(JSON.parse(read.stdout)).toMatchObject({
        patient: 'invented-heron',
        complaint: { painfulSide: 'left', since: null, onset: null, sites: [] },
        goals: [{ text: 'To hike again.', questionnaire: null }],
        sessions: words.length === 1 ? [] : [{ id: smallSession().id }],
      });
    }
  });

  it('takes an older patient document', async () => {
    const { alsoNoted: _, handOvers: __, ...older } = heron;
    const made = await exchange(file('older.json', { ...older, version: 3 }));
    expect([made.code, made.stderr]).toEqual([0, '']);
    expect(JSON.parse(made.stdout)).toMatchObject({ resourceType: 'Bundle' });
  });

  it.each<[why: string, words: string[], sentence: RegExp]>([
    ['no file', [], /^The files are missing\. Usage/],
    ['a file that is not there', ['nowhere.json'], /^"nowhere.json" does not exist/],
    ['something else', [file('other.json', { format: 'tea' })], /is no patient, session, plan or recording/],
    ['a list', [file('list.json', [])], /is no patient, session, plan or recording/],
    ['a recording without its session', [plan, recording], /belongs to none of the sessions/],
    ['text', [file('text.json', 'tea')], /is not JSON/],
    [
      'two patients',
      [session, file('egret.json', smallPlan({ patient: 'invented-egret' }))],
      /Give those of one patient/,
    ],
    ['two patient documents', [patient, file('again.json', heron)], /Two of the files are a patient/],
    [
      'a patient document of somebody else',
      [session, file('other-patient.json', { ...heron, pseudonym: 'invented-egret' })],
      /Give those of one patient/,
    ],
    ['a damaged patient', [file('bad-patient.json', { ...heron, sites: 3 })], /"sites"/],
    ['a damaged session', [file('damaged.json', { ...smallSession(), sets: 3 })], /"sets"/],
    ['a bundle among others', [session, file('b.json', { resourceType: 'Bundle' })], /give it by itself/],
    ['a bundle of somebody else', [file('c.json', { resourceType: 'Bundle' })], /damaged at "type"/],
  ])('refuses %s in one line', async (_, words, sentence) => {
    const { code, stdout, stderr } = await exchange(...words);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toMatch(sentence);
    expect([code, stdout]).toEqual([2, '']);
  });
});
