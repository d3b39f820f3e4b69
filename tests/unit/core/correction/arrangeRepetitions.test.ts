import { describe, expect, it } from 'vitest';
import { arrangeRepetitions } from '#core/correction/arrangeRepetitions';
import type { RepetitionChange } from '#core/correction/settleCorrections';
import type { FoundRepetition, RepetitionEvents } from '#core/segmentation/findRepetitions';

/** Samples from 0 to 4000 ms, 100 ms apart. */
const timesMs = Float64Array.from({ length: 41 }, (_, i) => 100 * i);
const none: RepetitionEvents = {
  startMs: 0,
  seatOffMs: null,
  topMs: null,
  topEndMs: null,
  bottomMs: null,
  seatContactMs: null,
  endMs: 0,
};
/** Loaded over these samples, which are its start and end. */
const dip = (loadedFrom: number, loadedTo: number, bottomMs: number | null = null): FoundRepetition => ({
  completeness: 'complete',
  events: { ...none, startMs: 100 * loadedFrom, bottomMs, endMs: 100 * loadedTo },
  loadedFrom,
  loadedTo,
});
/** From 300 ms before seat-off to 300 ms after seat contact. */
const rise = (loadedFrom: number, loadedTo: number, topMs: number, topEndMs: number): FoundRepetition => ({
  ...dip(loadedFrom, loadedTo),
  events: {
    ...none,
    startMs: 100 * loadedFrom - 300,
    seatOffMs: 100 * loadedFrom,
    topMs,
    topEndMs,
    seatContactMs: 100 * loadedTo,
    endMs: 100 * loadedTo + 300,
  },
});
const arranged = (found: FoundRepetition[], ...changes: RepetitionChange[]) =>
  arrangeRepetitions(found, timesMs, changes);
const spans = (list: readonly FoundRepetition[]) =>
  list.map(({ loadedFrom, loadedTo }) => [loadedFrom, loadedTo]);

describe('arrangeRepetitions(found, timesMs, changes)', () => {
  const two = [dip(5, 15, 1000), dip(20, 30, 2500)];

  it('changes nothing where no repetition is meant', () => {
    const nowhere: RepetitionChange[] = [
      { kind: 'exclude', atMs: 1700, reason: 'x' },
      { kind: 'join', atMs: 1000, withMs: 1700 },
      { kind: 'join', atMs: 1000, withMs: 1100 },
      { kind: 'split', atMs: 700 },
    ];
    expect(arranged(two, ...nowhere)).toEqual(arranged(two));
  });

  it('finds a repetition by its loaded time, or else by the time that it takes', () => {
    // At 400 ms the trunk leans already; the seat is left at 600.
    const [one] = arranged([rise(6, 14, 900, 1100)], { kind: 'exclude', atMs: 400, reason: 'Stumbled.' });
    expect(one!.excluded).toBe('Stumbled.');
  });

  it('splits at a sample, and gives each half the moments that lie in it', () => {
    const [first, second] = arranged([rise(6, 20, 900, 1700)], { kind: 'split', atMs: 1240 });
    expect(spans([first!, second!])).toEqual([
      [6, 11],
      [12, 20],
    ]);
    expect(first!.events).toEqual({ ...none, startMs: 300, seatOffMs: 600, topMs: 900, endMs: 1200 });
    expect(second!.events).toEqual({
      ...none,
      startMs: 1200,
      topEndMs: 1700,
      seatContactMs: 2000,
      endMs: 2300,
    });
    expect([first!.isByHand, second!.isByHand]).toEqual([true, true]);
  });

  it('does not split off less than three samples', () => {
    const at = (atMs: number) => arranged(two, { kind: 'split', atMs }).length;
    expect([700, 800, 1200, 1300].map(at)).toEqual([2, 3, 3, 2]);
  });

  it('joins neighbours in either order; of two turning points neither is that of the whole', () => {
    const changes: RepetitionChange[] = [
      { kind: 'join', atMs: 1000, withMs: 2500 },
      { kind: 'join', atMs: 2500, withMs: 1000 },
    ];
    for (const change of changes) {
      const [whole, ...more] = arranged(two, change);
      expect(more).toEqual([]);
      expect(whole).toMatchObject({ loadedFrom: 5, loadedTo: 30, isByHand: true, excluded: null });
      expect(whole!.events).toEqual({ ...none, startMs: 500, endMs: 3000 });
    }
    const [withOne] = arranged([dip(5, 15), dip(20, 30, 2500)], changes[0]!);
    expect(withOne!.events.bottomMs).toBe(2500);
    const [withFirst] = arranged([dip(5, 15, 1000), dip(20, 30)], changes[0]!);
    expect(withFirst!.events.bottomMs).toBe(1000);
  });

  it('joins two rises from the first seat-off to the last contact, excluded only where both were', () => {
    const rises = [rise(4, 12, 700, 900), rise(18, 28, 2200, 2500)];
    const join: RepetitionChange = { kind: 'join', atMs: 800, withMs: 2000 };
    const out = (atMs: number): RepetitionChange => ({ kind: 'exclude', atMs, reason: `at ${atMs}` });
    const [whole] = arranged(rises, join);
    expect(whole!.events).toEqual({
      ...none,
      startMs: 100,
      seatOffMs: 400,
      topMs: 700,
      topEndMs: 2500,
      seatContactMs: 2800,
      endMs: 3100,
    });
    expect(arranged(rises, out(800), join)[0]!.excluded).toBeNull();
    expect(arranged(rises, out(800), out(2000), join)[0]!.excluded).toBe('at 2000');
    const [topless] = arranged(
      [{ ...rises[0]!, events: { ...rises[0]!.events, topMs: null } }, rises[1]!],
      join,
    );
    expect(topless!.events.topMs).toBe(2200);
    const lost = { ...rises[1]!, events: { ...rises[1]!.events, topEndMs: null } };
    expect(arranged([rises[0]!, lost], join)[0]!.events.topEndMs).toBe(900);
  });

  it('moves the edge of a dip, which is its start or end, up to its neighbours', () => {
    const move = (edge: 'start' | 'end', atMs: number, toMs: number) =>
      arranged(two, { kind: 'move-edge', atMs, edge, toMs });
    const later = move('start', 1000, 840)[0]!;
    expect(later).toMatchObject({ loadedFrom: 8, isByHand: true, events: { startMs: 800, bottomMs: 1000 } });
    expect(spans(move('end', 1000, 9999))[0]).toEqual([5, 19]);
    expect(spans(move('start', 2500, 0))[1]).toEqual([16, 30]);
    expect(spans(move('start', 1000, 3000))[0]).toEqual([12, 15]);
    expect(spans(move('end', 1000, 0))[0]).toEqual([5, 8]);
    // To the ends of the recording, where there is no neighbour.
    expect(spans(move('start', 1000, -500))[0]).toEqual([0, 15]);
    expect(spans(move('end', 2500, 9999))[1]).toEqual([20, 40]);
    // A turning point that is now outside did not happen in it.
    expect(move('start', 1000, 1200)[0]!.events.bottomMs).toBeNull();
    expect(move('end', 1000, 900)[0]!.events.bottomMs).toBeNull();
  });

  it('moves seat-off and seat contact of a rise; the lean before and after stays unless it is passed', () => {
    const found = [rise(10, 20, 1300, 1700)];
    const move = (edge: 'start' | 'end', toMs: number) =>
      arranged(found, { kind: 'move-edge', atMs: 1500, edge, toMs })[0]!.events;
    expect(move('start', 1200)).toMatchObject({ startMs: 700, seatOffMs: 1200, topMs: 1300 });
    expect(move('start', 500)).toMatchObject({ startMs: 500, seatOffMs: 500 });
    expect(move('start', 1400)).toMatchObject({ seatOffMs: 1400, topMs: null, topEndMs: 1700 });
    expect(move('end', 1800)).toMatchObject({ seatContactMs: 1800, endMs: 2300, topEndMs: 1700 });
    expect(move('end', 2600)).toMatchObject({ seatContactMs: 2600, endMs: 2600 });
    expect(move('end', 1600)).toMatchObject({ seatContactMs: 1600, topEndMs: null });
    // Cut at its start: what is known of the seat is its contact.
    const cut = [{ ...found[0]!, events: { ...found[0]!.events, seatOffMs: null } }];
    const [moved] = arranged(cut, { kind: 'move-edge', atMs: 1500, edge: 'start', toMs: 1100 });
    expect(moved!.events).toMatchObject({ startMs: 700, seatOffMs: 1100 });
  });

  it('takes an exclusion back', () => {
    const changes: RepetitionChange[] = [
      { kind: 'exclude', atMs: 1000, reason: 'x' },
      { kind: 'include', atMs: 1000 },
    ];
    expect(arranged(two, ...changes)).toEqual(arranged(two));
  });
});
