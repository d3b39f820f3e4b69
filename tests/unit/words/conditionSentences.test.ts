import { describe, expect, it } from 'vitest';
import { compareConditions } from '#core/conditions/compareConditions';
import type { SetConditions } from '#core/conditions/setConditions';
import { conditionSentences } from '#words/conditionSentences';
import { conditionsOf, unlike } from '../../support/setConditions';

const said = (earlier: Partial<SetConditions>, later: Partial<SetConditions>, what?: string) =>
  conditionSentences(compareConditions(conditionsOf(earlier), conditionsOf(later)), what);

describe('conditionSentences(comparison)', () => {
  it('says nothing of sets that are alike', () => {
    expect(said({}, {})).toEqual([]);
  });

  it('says what differs, then and now', () => {
    expect(said({ seatHeightCm: 50 }, {}, ' with Fri 3 Apr 2026')).toEqual([
      'Not compared with Fri 3 Apr 2026: seat 50 cm then, 46 cm now.',
    ]);
    const load = { kind: 'loop', level: 'light', where: 'above-knees' } as const;
    expect(said({ isTest: false, load }, { footwear: null })).toEqual([
      'Not compared: load light loop above the knees then, none now; footwear shoes then, not noted now; ' +
        'kind of set training then, test now.',
    ]);
  });

  it('says what to do about two measuring versions', () => {
    expect(said({ measuringVersion: 6 }, {})).toEqual([
      'Not compared: measuring version 6 then, 7 now.',
      'Measure both recordings again with one version first.',
    ]);
  });

  it('names the sides where those are compared', () => {
    const comparison = compareConditions(conditionsOf({ side: 'left', freeLeg: 'behind' }), conditionsOf(), [
      'side',
    ]);
    expect(conditionSentences(comparison, '', { earlier: 'left', later: 'right' })).toEqual([
      'Not compared: other leg behind left, in front right.',
    ]);
  });

  it('says what was not noted of either set', () => {
    expect(said({ footwear: null, support: null }, { footwear: null, support: null })).toEqual([
      'Not noted of either set: support, footwear.',
    ]);
  });

  it.each(unlike)('has words for %j', (given) => {
    const [sentence] = said(given, {});
    expect(sentence).toMatch(/^Not compared: .+ then, .+ now\.$/);
    expect(sentence).not.toMatch(/undefined|null|\[object/);
  });
});
