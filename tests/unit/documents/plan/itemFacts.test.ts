import { describe, expect, it } from 'vitest';
import { freeRecording } from '#documents/plan/freeRecording';
import { doseWords, itemFacts } from '#documents/plan/itemFacts';
import { holdWithoutProgress } from '#documents/plan/itemProgress';
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
  ...holdWithoutProgress,
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

  it('gives step, load, what is held and how deep', () => {
    const stepDown: RepetitionItem = {
      ...freeRecording({ task: 'lateral-step-down', side: 'left', sets: 1, repetitions: 10 }),
      stepHeightCm: 15,
      load: { kind: 'weight', level: '4 kg', where: 'hand' },
      support: 'fingertip',
      bendDeg: 60,
    };
    expect(itemFacts(stepDown)).toEqual([
      'Step 15 cm high.',
      'Weight in the hand: 4 kg.',
      'One fingertip on something firm.',
      'Bend the knee to about 60°. A right angle is 90°.',
    ]);
  });

  it('says the levels that it knows in the language of the patient, and nothing of no load', () => {
    const loop = { ...hold, sets: 1, holds: 1, sides: ['left' as const], restSeconds: 0 };
    expect(itemFacts({ ...loop, load: { kind: 'loop', level: ' Light', where: 'above-knees' } })).toEqual([
      'Loop band above the knees: light.',
    ]);
    expect(itemFacts({ ...loop, load: { kind: 'none' } })).toEqual([]);
  });

  it('says that the legs take turns where there is more than one set of each, and how often', () => {
    const both = { ...sitToStand, tempo: null, seatHeightCm: null, sidesInTurn: true, perWeek: 2 };
    expect(itemFacts({ ...both, sides: ['left', 'right'] })).toEqual([
      'A set with one leg, then a set with the other.',
      'Twice a week.',
      '60 seconds of rest in between.',
    ]);
    expect(itemFacts(both)).toEqual(['Twice a week.', '60 seconds of rest in between.']);
  });
});
