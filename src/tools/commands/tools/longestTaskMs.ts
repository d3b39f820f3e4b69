/** An event of a browser's trace, as far as it is needed; times in microseconds. */
interface TraceEvent {
  name: string;
  ph: string;
  pid: number;
  tid: number;
  ts: number;
  dur?: number;
}

/**
 * Longest task of the page's main thread between two of the page's own marks.
 *
 * @param traceText  a trace with the categories 'toplevel' and 'blink.user_timing'
 * @param from  name of the mark before, and of the one after
 * @returns  ms, by the wall clock; a task under way at a mark counts whole
 * @throws Error  where a mark is not in the trace
 */
export function longestTaskMs(traceText: string, from: string, to: string): number {
  const { traceEvents } = JSON.parse(traceText) as { traceEvents: TraceEvent[] };
  const mark = (wanted: string) => {
    const found = traceEvents.find(({ name, ph }) => name === wanted && 'RIn'.includes(ph));
    if (found === undefined) throw new Error(`The trace has no mark "${wanted}".`);
    return found;
  };
  const [start, end] = [mark(from), mark(to)];
  let longestUs = 0;
  for (const { name, ph, pid, tid, ts, dur = 0 } of traceEvents) {
    const isTask = ph === 'X' && name.endsWith('RunTask') && pid === start.pid && tid === start.tid;
    if (isTask && ts < end.ts && ts + dur > start.ts) longestUs = Math.max(longestUs, dur);
  }
  return longestUs / 1000;
}
