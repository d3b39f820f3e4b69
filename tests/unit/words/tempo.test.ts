import { describe, expect, it } from 'vitest';
import { formatTempo, tempo } from '#words/tempo';

const events = {
  startMs: 900,
  seatOffMs: 1500,
  topMs: 2200,
  topEndMs: 2850,
  bottomMs: null,
  seatContactMs: 4100,
  endMs: 5000,
};

describe('tempo(repetition, shape)', () => {
  it('gives rise, top and lowering of a task with a seat', () => {
    // 2200 - 1500, 2850 - 2200, 4100 - 2850
    expect(tempo({ events }, 'rise').map(({ seconds }) => seconds)).toEqual([0.7, 0.65, 1.25]);
  });

  it('gives down and up of a dip', () => {
    // 2400 - 900, 5000 - 2400
    const dip = {
      ...events,
      seatOffMs: null,
      topMs: null,
      topEndMs: null,
      seatContactMs: null,
      bottomMs: 2400,
    };
    expect(tempo({ events: dip }, 'dip').map(({ seconds }) => seconds)).toEqual([1.5, 2.6]);
  });

  it('leaves out what was not seen', () => {
    const parts = tempo({ events: { ...events, topMs: null, topEndMs: null } }, 'rise');
    expect(formatTempo(parts)).toBe('– / – / – s');
  });
});

describe('formatTempo(parts)', () => {
  it('keeps one digit', () => expect(formatTempo(tempo({ events }, 'rise'))).toBe('0.7 / 0.7 / 1.3 s'));
});
