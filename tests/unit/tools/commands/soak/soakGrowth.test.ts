import { describe, expect, it } from 'vitest';
import { soakGrowth, type SoakSample } from '#tools/commands/tools/soak/soakGrowth';

const sample = (minute: number, change: Partial<SoakSample> = {}): SoakSample => ({
  minute,
  heapBytes: 20e6,
  buffersBytes: 50e6,
  rendererBytes: 300e6,
  workers: 2,
  endedWorkers: 0,
  objectUrls: 1,
  ...change,
});
const minutes = [2, 3, 4, 5, 6, 7, 8, 9, 10];

describe('soakGrowth(samples)', () => {
  it('is flat, with a slope of 0, where nothing changes', () => {
    for (const growth of Object.values(soakGrowth(minutes.map((minute) => sample(minute)))))
      expect(growth).toMatchObject({ flat: true, slopePerHour: 0 });
  });

  it('gives the slope of a straight line an hour: 0.5 MB a minute are 30 MB', () => {
    const rising = minutes.map((minute) => sample(minute, { heapBytes: 20e6 + 0.5e6 * minute }));
    const { heapBytes, buffersBytes } = soakGrowth(rising);
    // The middle minutes of the first and last third are 3 and 9.
    expect(heapBytes).toMatchObject({ from: 21.5e6, to: 24.5e6, flat: false });
    expect(heapBytes!.slopePerHour).toBeCloseTo(30e6, 3);
    expect(buffersBytes!.flat).toBe(true);
  });

  it('does not take one peak for growth, but one worker or address left over', () => {
    const peak = minutes.map((minute) => sample(minute, minute === 9 ? { heapBytes: 90e6 } : {}));
    expect(soakGrowth(peak).heapBytes!.flat).toBe(true);
    const left = minutes.map((minute) =>
      sample(minute, minute >= 7 ? { workers: 3, endedWorkers: 1, objectUrls: 2 } : {}),
    );
    expect(soakGrowth(left)).toMatchObject({
      workers: { flat: false },
      endedWorkers: { flat: false },
      objectUrls: { flat: false },
    });
  });

  it('says nothing of what was not read, or of fewer than six samples', () => {
    expect(
      soakGrowth(minutes.map((minute) => sample(minute, { rendererBytes: null }))).rendererBytes,
    ).toBeNull();
    expect(soakGrowth(minutes.slice(0, 5).map((minute) => sample(minute))).heapBytes).toBeNull();
  });
});
