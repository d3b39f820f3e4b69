import { describe, expect, it } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import { limitsOrigin } from '#features/review/rules/limitsOrigin';

const signed = { by: 'T1', at: '2026-04-06T18:00:00.000Z' };
const planned = { 'knee-angle': { least: -12, most: 8 } };

describe('limitsOrigin(present, lastSet, planned)', () => {
  it('names who set them, and the session they were carried over from', () => {
    const takenFrom = '2026-04-05T06:00:00.000Z';
    expect(limitsOrigin(planned, { limits: planned, ...signed }, planned)).toEqual({
      kind: 'set',
      ...signed,
    });
    expect(limitsOrigin(planned, { limits: planned, ...signed, takenFrom }, planned)).toEqual({
      kind: 'taken-over',
      takenFrom,
      ...signed,
    });
  });

  it('names the plan, then the default, then the recording that came with them', () => {
    expect(limitsOrigin(planned, undefined, planned)).toEqual({ kind: 'plan' });
    expect(limitsOrigin(defaultLimits, undefined, defaultLimits)).toEqual({ kind: 'plan' });
    expect(limitsOrigin(defaultLimits, undefined, planned)).toEqual({ kind: 'default' });
    expect(limitsOrigin(planned, undefined, null)).toEqual({ kind: 'session' });
  });
});
