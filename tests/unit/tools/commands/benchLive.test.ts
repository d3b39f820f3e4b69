import { describe, expect, it } from 'vitest';
import { countDelaysMs } from '#tools/commands/tools/benchLive';
import { longestTaskMs } from '#tools/commands/tools/longestTaskMs';

describe('countDelaysMs({ counts, reviewedEndsMs })', () => {
  it('takes each end from the time at which its count was reported', () => {
    const counts = [
      { count: 1, atMs: 3900 },
      { count: 2, atMs: 7700 },
    ];
    expect(countDelaysMs({ counts, reviewedEndsMs: [4000, 7500] })).toEqual([-100, 200]);
  });

  it('takes the first time where a count was reported again, and a later count for one that was skipped', () => {
    const counts = [
      { count: 1, atMs: 3900 },
      { count: 3, atMs: 12_000 },
      { count: 2, atMs: 12_400 },
      { count: 3, atMs: 13_000 },
    ];
    expect(countDelaysMs({ counts, reviewedEndsMs: [3800, 7500, 11_900, 16_000] })).toEqual([100, 4500, 100]);
  });
});

describe('longestTaskMs(traceText, from, to)', () => {
  const task = (ts: number, dur: number, more = {}) => ({
    name: 'ThreadControllerImpl::RunTask',
    ph: 'X',
    pid: 3,
    tid: 1,
    ts,
    dur,
    ...more,
  });
  const mark = (name: string, ts: number) => ({ name, ph: 'I', pid: 3, tid: 1, ts });
  const traceEvents = [
    task(0, 900_000),
    mark('from', 1_000_000),
    task(1_100_000, 12_500),
    task(1_200_000, 31_000),
    task(1_300_000, 77_000, { tid: 2 }),
    task(1_400_000, 88_000, { pid: 4 }),
    task(1_500_000, 99_000, { name: 'FunctionCall' }),
    mark('to', 2_000_000),
    task(2_100_000, 500_000),
  ];

  it('takes tasks of the same thread between the marks only', () => {
    expect(longestTaskMs(JSON.stringify({ traceEvents }), 'from', 'to')).toBe(31);
  });

  it('takes a task that runs at a mark whole', () => {
    const overlapping = [...traceEvents, task(980_000, 60_000)];
    expect(longestTaskMs(JSON.stringify({ traceEvents: overlapping }), 'from', 'to')).toBe(60);
  });

  it('throws where a mark is missing', () => {
    expect(() => longestTaskMs(JSON.stringify({ traceEvents }), 'from', 'end')).toThrow(
      'The trace has no mark "end".',
    );
  });
});
