import { describe, expect, it } from 'vitest';
import { freeRecording } from '#documents/plan/freeRecording';
import { doseWords, itemFacts } from '#documents/plan/itemFacts';
import type { HoldItem, RepetitionItem } from '#documents/plan/planDocument';

const sitToStand: RepetitionItem = {
  ...freeRecording({ task: 'split-stance-sit-to-stand', side: 'right', sets: 2, repetitions: 6 }),
  seatHeightCm: 46,
  tempo: { downSeconds: 2, pauseSeconds: 0, upSeconds: 1 },
};
const hold: HoldItem = {
  kind: 'hold',
  task: 'quad-press-hold',
  sides: ['left', 'right'],
  sets: 1,
  restSeconds: 45,
  holds: 3,
  holdSeconds: 30,
};

describe('doseWords(item)', () => {
  it('gives sets, repetitions and side', () => {
    expect(doseWords(sitToStand)).toBe('2 sets of 6 repetitions, right leg');
  });

  it('leaves a single set out and puts the sides in order', () => {
    expect(doseWords(hold)).toBe('3 holds of 30 seconds, left leg, then right leg');
  });

  it('counts one as one', () => {
    expect(doseWords({ ...sitToStand, sets: 1, repetitions: 1 })).toBe('1 repetition, right leg');
  });
});

describe('itemFacts(item)', () => {
  it('gives tempo, seat and rest', () => {
    expect(itemFacts(sitToStand)).toEqual([
      'Up in 1 second, down in 2 seconds.',
      'Seat 46 cm high.',
      '60 seconds of rest in between.',
    ]);
  });

  it('gives no rest where there is nothing in between', () => {
    expect(itemFacts({ ...sitToStand, sets: 1, tempo: null, seatHeightCm: null })).toEqual([]);
  });

  it('gives the rest between holds', () => {
    expect(itemFacts(hold)).toEqual(['45 seconds of rest in between.']);
  });
});
