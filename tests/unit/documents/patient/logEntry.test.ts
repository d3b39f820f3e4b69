import { describe, expect, it } from 'vitest';
import {
  bothLogs,
  keepsLog,
  latestIds,
  missingIds,
  signedText,
  type LogEntry,
} from '#documents/patient/logEntry';

const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;

function entry(digit: number, after: number[] = [], change: Partial<LogEntry> = {}): LogEntry {
  return {
    id: idOf(digit),
    at: `2026-04-0${digit}T06:00:00.000Z`,
    by: 'AB',
    what: 'review',
    about: idOf(9),
    after: after.map(idOf),
    key: 'key',
    signature: 'signature',
    ...change,
  };
}

describe('signedText(pseudonym, entry)', () => {
  it('is a JSON array of everything but the signature, with the patient', () => {
    expect(signedText('Blue “Heron” 7', entry(2, [1]))).toBe(
      `["overfoot-log",1,"Blue “Heron” 7","${idOf(2)}","2026-04-02T06:00:00.000Z","AB","review","${idOf(9)}",["${idOf(1)}"],"key"]`,
    );
  });
});

describe('bothLogs(here, there)', () => {
  it('is the union, in order of time, whichever side is first', () => {
    const [here, there] = [
      [entry(1), entry(4, [1])],
      [entry(1), entry(2, [1])],
    ];
    const all = [entry(1), entry(2, [1]), entry(4, [1])];
    expect(bothLogs(here, there)).toEqual(all);
    expect(bothLogs(there, here)).toEqual(all);
  });

  it('drops neither of two entries that have one id', () => {
    const changed = entry(1, [], { by: 'KN' });
    expect(bothLogs([entry(1)], [changed])).toEqual([entry(1), changed]);
  });
});

describe('missingIds(log, seen)', () => {
  it('finds an entry that was taken out of the middle, and one of the end that was seen', () => {
    const log = [entry(1), entry(2, [1]), entry(3, [2])];
    expect(missingIds(log, latestIds(log))).toEqual([]);
    expect(missingIds([log[0]!, log[2]!])).toEqual([idOf(2)]);
    expect(missingIds(log.slice(0, 2))).toEqual([]);
    expect(missingIds(log.slice(0, 2), latestIds(log))).toEqual([idOf(3)]);
  });
});

describe('latestIds(log)', () => {
  it('is both ends where two devices wrote at once, and one again after the next entry', () => {
    const log = [entry(1), entry(2, [1]), entry(3, [1])];
    expect(latestIds(log)).toEqual([idOf(2), idOf(3)]);
    expect(latestIds([...log, entry(4, [2, 3])])).toEqual([idOf(4)]);
  });
});

describe('keepsLog(before, after)', () => {
  it('allows adding, and neither removing nor editing', () => {
    expect(keepsLog([entry(1)], [entry(1), entry(2)])).toBe(true);
    expect(keepsLog([entry(1), entry(2)], [entry(1)])).toBe(false);
    expect(keepsLog([entry(1)], [entry(1, [], { about: 'other' })])).toBe(false);
  });
});
