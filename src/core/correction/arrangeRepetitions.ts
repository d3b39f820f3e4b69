import { clamp } from '../clamp';
import type { FoundRepetition, RepetitionEvents } from '../segmentation/findRepetitions';
import type { RepetitionChange } from './settleCorrections';

/** A repetition after corrections. */
export interface ArrangedRepetition extends FoundRepetition {
  /** Why it does not count; null where it counts. */
  excluded: string | null;
  /** Whether its start or end was set by hand. */
  isByHand: boolean;
}

/** A repetition lasts at least this many samples. */
const fewestSamples = 3;

/**
 * Repetitions with the corrections applied, in order of time. A correction that fits no repetition (because
 * another one removed it) has no effect.
 *
 * @param timesMs  the measurement's uniform time base, ms
 */
export function arrangeRepetitions(
  found: readonly FoundRepetition[],
  timesMs: Float64Array,
  changes: readonly RepetitionChange[],
): ArrangedRepetition[] {
  let arranged = found.map((repetition): ArrangedRepetition => ({
    ...repetition,
    excluded: null,
    isByHand: false,
  }));
  for (const change of changes) arranged = applied(arranged, timesMs, change);
  return arranged;
}

function applied(
  list: ArrangedRepetition[],
  timesMs: Float64Array,
  change: RepetitionChange,
): ArrangedRepetition[] {
  const index = indexAt(list, timesMs, change.atMs);
  const one = list[index];
  if (one === undefined) return list;
  switch (change.kind) {
    case 'exclude':
      return list.with(index, { ...one, excluded: change.reason });
    case 'include':
      return list.with(index, { ...one, excluded: null });
    case 'split':
      return list.toSpliced(index, 1, ...split(one, timesMs, change.atMs));
    case 'join': {
      const other = indexAt(list, timesMs, change.withMs);
      const [first, second] = [list[Math.min(index, other)], list[Math.max(index, other)]];
      if (first === undefined || second === undefined || Math.abs(index - other) !== 1) return list;
      return list.toSpliced(Math.min(index, other), 2, joined(first, second));
    }
    case 'move-edge': {
      const room = {
        from: list[index - 1]?.loadedTo ?? -1,
        to: list[index + 1]?.loadedFrom ?? timesMs.length,
      };
      return list.with(index, withEdge(one, timesMs, change.edge, change.toMs, room));
    }
  }
}

/** Index of the repetition that a time refers to: the one loaded then, otherwise the one in progress; -1 for none. */
function indexAt(list: readonly FoundRepetition[], timesMs: Float64Array, timeMs: number): number {
  const loaded = list.findIndex(
    ({ loadedFrom, loadedTo }) => timeMs >= timesMs[loadedFrom]! && timeMs <= timesMs[loadedTo]!,
  );
  if (loaded >= 0) return loaded;
  return list.findIndex(({ events }) => timeMs >= events.startMs && timeMs <= events.endMs);
}

function split(one: ArrangedRepetition, timesMs: Float64Array, atMs: number): ArrangedRepetition[] {
  const cut = sampleAt(timesMs, atMs);
  if (cut - one.loadedFrom < fewestSamples || one.loadedTo - cut < fewestSamples) return [one];
  const cutMs = timesMs[cut]!;
  const part = (fromMs: number, toMs: number): RepetitionEvents => {
    const within = (timeMs: number | null) =>
      timeMs !== null && timeMs >= fromMs && timeMs <= toMs ? timeMs : null;
    const { seatOffMs, topMs, topEndMs, bottomMs, seatContactMs } = one.events;
    return {
      startMs: fromMs,
      seatOffMs: within(seatOffMs),
      topMs: within(topMs),
      topEndMs: within(topEndMs),
      bottomMs: within(bottomMs),
      seatContactMs: within(seatContactMs),
      endMs: toMs,
    };
  };
  const common = { completeness: 'complete', excluded: one.excluded, isByHand: true } as const;
  const { startMs, endMs } = one.events;
  return [
    { ...common, events: part(startMs, cutMs), loadedFrom: one.loadedFrom, loadedTo: cut - 1 },
    { ...common, events: part(cutMs, endMs), loadedFrom: cut, loadedTo: one.loadedTo },
  ];
}

function joined(first: ArrangedRepetition, second: ArrangedRepetition): ArrangedRepetition {
  const [a, b] = [first.events, second.events];
  return {
    completeness: 'complete',
    excluded: first.excluded === null ? null : second.excluded,
    isByHand: true,
    events: {
      startMs: a.startMs,
      seatOffMs: a.seatOffMs,
      topMs: a.topMs ?? b.topMs,
      topEndMs: b.topEndMs ?? a.topEndMs,
      // Neither of the two turning points is that of the whole.
      bottomMs: a.bottomMs !== null && b.bottomMs !== null ? null : (a.bottomMs ?? b.bottomMs),
      seatContactMs: b.seatContactMs,
      endMs: b.endMs,
    },
    loadedFrom: first.loadedFrom,
    loadedTo: second.loadedTo,
  };
}

/** @param room  samples between its neighbours; an edge stays within them */
function withEdge(
  one: ArrangedRepetition,
  timesMs: Float64Array,
  edge: 'start' | 'end',
  toMs: number,
  room: { from: number; to: number },
): ArrangedRepetition {
  const { events } = one;
  const hasSeat = events.seatOffMs !== null || events.seatContactMs !== null;
  if (edge === 'start') {
    const loadedFrom = clamp(sampleAt(timesMs, toMs), room.from + 1, one.loadedTo - fewestSamples);
    const timeMs = timesMs[loadedFrom]!;
    const moved = hasSeat
      ? { startMs: Math.min(events.startMs, timeMs), seatOffMs: timeMs }
      : { startMs: timeMs };
    return { ...one, loadedFrom, isByHand: true, events: within({ ...events, ...moved }) };
  }
  const loadedTo = clamp(sampleAt(timesMs, toMs), one.loadedFrom + fewestSamples, room.to - 1);
  const timeMs = timesMs[loadedTo]!;
  const moved = hasSeat
    ? { endMs: Math.max(events.endMs, timeMs), seatContactMs: timeMs }
    : { endMs: timeMs };
  return { ...one, loadedTo, isByHand: true, events: within({ ...events, ...moved }) };
}

/** Moments now outside the repetition did not happen within it. */
function within(events: RepetitionEvents): RepetitionEvents {
  const { startMs, endMs, seatOffMs, seatContactMs } = events;
  const kept = (timeMs: number | null) =>
    timeMs !== null && timeMs >= (seatOffMs ?? startMs) && timeMs <= (seatContactMs ?? endMs) ? timeMs : null;
  return {
    ...events,
    topMs: kept(events.topMs),
    topEndMs: kept(events.topEndMs),
    bottomMs: kept(events.bottomMs),
  };
}

function sampleAt(timesMs: Float64Array, timeMs: number): number {
  const last = timesMs.length - 1;
  const spanMs = timesMs[last]! - timesMs[0]!;
  return spanMs > 0 ? clamp(Math.round(((timeMs - timesMs[0]!) / spanMs) * last), 0, last) : 0;
}
