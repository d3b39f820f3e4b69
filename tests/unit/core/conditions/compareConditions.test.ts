import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareAll, compareConditions } from '#core/conditions/compareConditions';
import type { SetConditions } from '#core/conditions/setConditions';
import type { Load } from '#core/protocol/load';
import { conditionsOf, unlike } from '../../../support/setConditions';

const base = conditionsOf();
const differing = (earlier: Partial<SetConditions>, later: Partial<SetConditions>) =>
  compareConditions(conditionsOf(earlier), conditionsOf(later)).differences.map(({ condition }) => condition);

describe('compareConditions(earlier, later)', () => {
  it('finds sets with the same conditions alike', () => {
    expect(compareConditions(base, conditionsOf())).toEqual({ differences: [], notNoted: [] });
  });

  it.each(unlike)('finds the difference of %j, and no other', (given) => {
    const [condition] = Object.keys(given) as (keyof SetConditions)[];
    const later = conditionsOf(given);
    expect(compareConditions(base, later).differences).toEqual([
      { condition, earlier: base[condition!], later: later[condition!] },
    ]);
  });

  it('has a difference for every condition that a set has', () => {
    expect(unlike.flatMap(Object.keys).sort()).toEqual(Object.keys(base).sort());
  });

  it('takes seats and steps for the same up to 1 cm', () => {
    expect(differing({ seatHeightCm: 46 }, { seatHeightCm: 47 })).toEqual([]);
    expect(differing({ seatHeightCm: 46 }, { seatHeightCm: 47.1 })).toEqual(['seatHeightCm']);
    expect(differing({ stepHeightCm: 20 }, { stepHeightCm: 19 })).toEqual([]);
    expect(differing({ stepHeightCm: 20 }, { stepHeightCm: 18.5 })).toEqual(['stepHeightCm']);
  });

  it('takes loads for the same by kind, level and place', () => {
    const load: Load = { kind: 'loop', level: 'light', where: 'above-knees' };
    expect(differing({ load }, { load: { ...load, level: 'light ' } })).toEqual([]);
    for (const other of [{ kind: 'tube' }, { level: 'medium' }, { where: 'ankle' }] as const)
      expect(differing({ load }, { load: { ...load, ...other } })).toEqual(['load']);
  });

  it('compares nothing that was noted of one set with what was not noted of the other', () => {
    for (const not of [{ support: null }, { load: null }, { seatHeightCm: null }, { footwear: null }])
      expect(differing(not, {})).toEqual(Object.keys(not));
  });

  it('says what was noted of neither, where the task has it', () => {
    const nothing = { seatHeightCm: null, stepHeightCm: null, support: null, freeLeg: null, stage: null };
    const notNoted = (task: SetConditions['task']) =>
      compareConditions(conditionsOf({ task, ...nothing }), conditionsOf({ task, ...nothing })).notNoted;
    expect(notNoted('single-leg-sit-to-stand')).toEqual(['seatHeightCm', 'support', 'freeLeg']);
    expect(notNoted('lateral-step-down')).toEqual(['stepHeightCm', 'support', 'freeLeg']);
    expect(notNoted('sliding-leg-squat')).toEqual(['support']);
  });

  it('leaves out what is meant to differ', () => {
    const left = conditionsOf({ side: 'left', seatHeightCm: 50 });
    expect(compareConditions(left, base, ['side']).differences).toEqual([
      { condition: 'seatHeightCm', earlier: 50, later: 46 },
    ]);
  });

  it('finds the same differences in either order', () => {
    const any = fc.constantFrom(...unlike, {}).map((given) => conditionsOf(given));
    fc.assert(
      fc.property(any, any, (one, other) => {
        const [there, back] = [compareConditions(one, other), compareConditions(other, one)];
        expect(back.differences).toEqual(
          there.differences.map(({ condition, earlier, later }) => ({
            condition,
            earlier: later,
            later: earlier,
          })),
        );
      }),
    );
  });
});

describe('compareAll(sets)', () => {
  it('gives the first difference from the first set', () => {
    const sets = [base, conditionsOf(), conditionsOf({ support: 'hand' }), conditionsOf({ isTest: false })];
    expect(compareAll(sets)?.differences).toEqual([{ condition: 'support', earlier: 'none', later: 'hand' }]);
  });

  it('finds alike sets alike, and has nothing to compare in one', () => {
    const bare = conditionsOf({ footwear: null });
    expect(compareAll([bare, bare, bare])).toEqual({ differences: [], notNoted: ['footwear'] });
    expect(compareAll([base])).toBeNull();
  });

  it('refuses none', () => {
    expect(() => compareAll([])).toThrow(RangeError);
  });
});
