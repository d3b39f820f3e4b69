import { describe, expect, it } from 'vitest';
import { createRateMeter } from '#device/live/createRateMeter';

describe('createRateMeter(startMs)', () => {
  it('counts over the last two seconds', () => {
    const meter = createRateMeter(100);
    for (let i = 1; i <= 60; i++) meter.count(100 + i * 50);
    // 3 s at 20 a second, then nothing: of the window from 2100 to 4100 the first second is full.
    expect(meter.perSecond(3100)).toBeCloseTo(20, 6);
    expect(meter.perSecond(4100)).toBeCloseTo(10, 6);
    expect(meter.perSecond(9000)).toBe(0);
  });

  it('counts over the time so far where it is shorter, and is 0 at its start', () => {
    const meter = createRateMeter(1000);
    expect(meter.perSecond(1000)).toBe(0);
    meter.count(1200);
    meter.count(1500);
    expect(meter.perSecond(1500)).toBeCloseTo(4, 6);
  });

  it('forgets what was before a restart', () => {
    const meter = createRateMeter(0);
    meter.count(10);
    meter.restart(5000);
    meter.count(5250);
    expect(meter.perSecond(5500)).toBeCloseTo(2, 6);
  });
});
