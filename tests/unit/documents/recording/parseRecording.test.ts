import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '#core/problem';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingSchema, type RecordingDocument } from '#documents/recording/recordingDocument';
import { smallRecording } from '../../../support/smallRecording';

const text = JSON.stringify(smallRecording());

/** The document with something done to it, as text. */
function damaged(change: (document: RecordingDocument) => unknown): string {
  const document = JSON.parse(text) as RecordingDocument;
  change(document);
  return JSON.stringify(document);
}

function problemOf(wrong: string): string | null {
  try {
    parseRecording(wrong);
    return null;
  } catch (error) {
    if (isProblem(error, 'recording')) return error.message;
    throw error;
  }
}

/** One or more sentences, the last with what to do. */
const sentences = /^This .*\. (Choose|Save|Update) [^.]*\.$/s;

describe('parseSession(text)', () => {
  it('says of a recording beyond what can be measured in which way, and not that it is damaged', () => {
    const long = damaged(({ observed: { timesMs } }) => (timesMs[timesMs.length - 1] = 24 * 3_600_000));
    expect(problemOf(long)).toBe(
      'This recording document lasts longer than 30 minutes, which is longer than can be measured at once. ' +
        'It stays as it is, but can’t be shown here: film shorter sets, in one go.',
    );
  });

  it.each([
    ['an empty file', ''],
    ['a cut-off file', text.slice(0, 5000)],
    ['something else', 'knee over foot'],
    ['a picture', '\u0089PNG\r\n\u001a\n'],
  ])('says of %s that it is not JSON', (_, wrong) => {
    expect(problemOf(wrong)).toBe(
      'This is not a recording document: it is not JSON. Choose a file that was saved here.',
    );
  });

  it.each([
    'null',
    '7',
    '[]',
    '"overfoot-session"',
    '{}',
    '{"format":"another"}',
    '{"format":null,"version":1}',
  ])('says of other JSON (%s) that it is not a recording document', (wrong) => {
    expect(problemOf(wrong)).toBe('This is not a recording document. Choose a file that was saved here.');
  });

  it('keeps what bends before the set showed', () => {
    const bends = { yawDeg: -3.5, sdDeg: 2.4, footDeg: { left: 4, right: null } };
    const withBends = damaged(({ setup }) => Object.assign(setup, { bends }));
    expect(parseRecording(withBends).setup.bends).toEqual(bends);
  });

  it('says of a newer version that the program must be updated', () => {
    const newer = damaged((document) => Object.assign(document, { version: 99 }));
    expect(problemOf(newer)).toMatch(
      /is of version 99; this program reads up to \d+\. Update the program\.$/,
    );
  });

  it.each<[string, (document: RecordingDocument) => unknown, RegExp]>([
    ['a version that never was', (d) => Object.assign(d, { version: 0 }), /"version"/],
    ['a field that is missing', (d) => Reflect.deleteProperty(d, 'limits'), /"limits"/],
    ['a field too many', (d) => Object.assign(d, { extra: 1 }), /extra/],
    ['a side that is none', (d) => Object.assign(d.setup, { side: 'both' }), /"setup\.side"/],
    ['a task that is none', (d) => Object.assign(d.setup, { task: 'jump' }), /"setup\.task"/],
    ['a point farther away than can be', (d) => (d.observed.xPx[7] = 1e308), /"observed\.xPx\.7"/],
    ['a limit out of range', (d) => (d.limits['knee-angle'].most = 31), /"limits\.knee-angle\.most"/],
    ['an id that is none', (d) => (d.id = '12'), /"id"/],
    ['a date that is none', (d) => (d.createdAt = 'yesterday'), /"createdAt"/],
    ['a picture without width', (d) => (d.video.widthPx = 0), /"video\.widthPx"/],
    ['words for a number', (d) => Object.assign(d.observed.xPx, { 4: 'left' }), /"observed\.xPx\.4"/],
    ['a confidence above 1', (d) => (d.observed.score[4] = 1.2), /"observed\.score\.4"/],
    [
      'points that are missing',
      (d) => d.observed.yPx.pop(),
      /"observed\.yPx" has \d+ values where \d+ frames/,
    ],
    ['points too many', (d) => d.observed.score.push(0), /"observed\.score" has \d+ values/],
    ['a frame too many', (d) => d.observed.timesMs.push(9e6), /values where \d+ frames need/],
    [
      'time that stands still',
      (d) => (d.observed.timesMs[5] = d.observed.timesMs[4]!),
      /times do not increase/,
    ],
    ['points in another order', (d) => d.observed.points.reverse(), /body points are in another order/],
    [
      'curves of different lengths',
      (d) => d.derived.curves['knee-off-line'].values.pop(),
      /curves differ in length/,
    ],
    ['curves without a time base', (d) => (d.derived.rateHz = 0), /no time base/],
    [
      'a value without a reason',
      (d) => (d.derived.curves['knee-off-line'].values[9] = null),
      /knee-off-line" gives reasons/,
    ],
    [
      'a reason without a gap',
      (d) => (d.derived.curves['knee-angle'].values[0] = 3),
      /knee-angle" gives reasons/,
    ],
    [
      'a reason past the end',
      (d) => (d.derived.curves['knee-angle'].missing.at(-1)!.to = 9e5),
      /gives reasons/,
    ],
    ['a repetition past the end', (d) => (d.derived.repetitions[1]!.loadedTo = 9e5), /outside the recording/],
    [
      'a repetition that runs backward',
      (d) => (d.derived.repetitions[0]!.loadedFrom = 150),
      /outside the rec/,
    ],
    [
      'a peak past the end',
      (d) => (d.derived.repetitions[0]!.ranges['knee-angle'].max!.sample = 9e5),
      /outside the rec/,
    ],
    [
      'a gap at the end without a reason',
      (d) => d.derived.curves['knee-off-line'].values.splice(-1, 1, null),
      /gives reasons/,
    ],
    [
      'a depth past the end',
      (d) => (d.derived.repetitions[1]!.ranges.depth!.max!.sample = 9e5),
      /outside the rec/,
    ],
    ['repetitions that are miscounted', (d) => (d.derived.repetitions[0]!.number = 2), /out of order/],
    ['repetitions out of order', (d) => d.derived.repetitions.reverse(), /out of order/],
    [
      'a verdict with a reason for none',
      (d) => (d.derived.repetitions[0]!.judgement.reason = 'no-person'),
      /judgement of repetition 1 contradicts itself/,
    ],
    [
      'a judgement without the knee angle',
      (d) => (d.derived.repetitions[1]!.judgement.measures = []),
      /judgement of repetition 2 contradicts itself/,
    ],
    [
      'a verdict without a peak',
      (d) => (d.derived.repetitions[1]!.judgement.measures[0]!.extreme = null),
      /judgement of repetition 2 contradicts itself/,
    ],
  ])('says where and what to do for %s', (_, change, where) => {
    const problem = problemOf(damaged(change));
    expect(problem).toMatch(where);
    expect(problem).toMatch(sentences);
  });

  it('refuses a number that JSON writes and no computer holds', () => {
    expect(problemOf(text.replace(/"durationMs":\d+/, '"durationMs":1e999'))).toMatch(/"video\.durationMs"/);
  });

  it('does not let a document reach into other objects', () => {
    const reaching = text.replace('{', '{"__proto__":{"reached":true},');
    expect(problemOf(reaching)).toMatch(sentences);
    expect('reached' in {}).toBe(false);
  });

  const junk = fc.oneof(
    fc.constantFrom(null, '', 'x', -1, 0, 0.5, 1e300, true, [], {}, [null]),
    fc.double({ noNaN: true }),
    fc.json().map((json) => JSON.parse(json) as unknown),
  );

  it('reads only what is valid from a document in which anything was changed, and never crashes', () => {
    const path = fc.noBias(fc.array(fc.nat(100_000), { minLength: 1, maxLength: 6 }));
    const how = fc.constantFrom<Damage>('replace', 'remove', 'double', 'nudge', 'nudge');
    let accepted = 0;
    let refused = 0;
    fc.assert(
      fc.property(path, how, junk, (steps, damage, value) => {
        const wrong = damaged((document) => damageAt(document, steps, damage, value));
        const problem = problemOf(wrong);
        if (problem === null) {
          accepted++;
          expectValid(parseRecording(wrong));
        } else {
          refused++;
          expect(problem).toMatch(sentences);
        }
      }),
      { numRuns: 300 },
    );
    // Both ways are walked: harmless changes (a point elsewhere) and damage.
    expect(accepted).toBeGreaterThan(5);
    expect(refused).toBeGreaterThan(50);
  }, 30_000);

  it('never crashes on text of any kind', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (anything) => {
        expect(problemOf(anything)).toMatch(sentences);
      }),
    );
  });
});

type Damage = 'replace' | 'remove' | 'double' | 'nudge';

/** Walks into a document, at each step to one of the keys at hand, and damages what is at the end. */
function damageAt(document: object, steps: readonly number[], damage: Damage, value: unknown): void {
  let at = document as Record<string, unknown>;
  let key = '';
  for (const step of steps) {
    const keys = Object.keys(at);
    if (keys.length === 0) return;
    key = keys[step % keys.length]!;
    const next = at[key];
    if (step === steps.at(-1) || typeof next !== 'object' || next === null) break;
    at = next as Record<string, unknown>;
  }
  const old = at[key];
  if (damage === 'replace') at[key] = value;
  else if (damage === 'nudge') at[key] = typeof old === 'number' ? old + 0.25 : value;
  else if (Array.isArray(at)) at.splice(Number(key), 1, ...(damage === 'remove' ? [] : [old, old]));
  else if (damage === 'remove') Reflect.deleteProperty(at, key);
  else at[`${key}2`] = old;
}

/** Told once more in other words than the program's own: what every valid document keeps to. */
function expectValid(document: RecordingDocument): void {
  expect(recordingSchema.safeParse(document).success).toBe(true);
  const { observed, derived } = document;
  const frames = observed.timesMs.length;
  expect([observed.xPx, observed.yPx, observed.score].map(({ length }) => length / 33)).toEqual([
    frames,
    frames,
    frames,
  ]);
  expect(observed.timesMs.toSorted((a, b) => a - b)).toEqual(observed.timesMs);
  expect(new Set(observed.timesMs).size).toBe(frames);
  for (const { values, missing } of [derived.curves['knee-angle'], derived.curves['knee-off-line']]) {
    expect(values).toHaveLength(derived.curves['knee-angle'].values.length);
    const explained = missing.flatMap(({ from, to }) =>
      Array.from({ length: to - from + 1 }, (_, i) => from + i),
    );
    expect(values.flatMap((value, i) => (value === null ? [i] : []))).toEqual(explained);
  }
  derived.repetitions.forEach(({ number, loadedFrom, loadedTo, judgement }, i) => {
    expect(number).toBe(i + 1);
    expect(derived.curves['knee-angle'].values.slice(loadedFrom, loadedTo + 1)).toHaveLength(
      loadedTo - loadedFrom + 1,
    );
    expect(judgement.reason === null).toBe(judgement.verdict !== 'not-measured');
  });
}
