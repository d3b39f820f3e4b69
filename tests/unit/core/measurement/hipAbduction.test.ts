import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import { sides } from '#core/protocol/side';
import { filmPerson } from '../../../support/syntheticPerson';

/** The stance knee is bent all along and its own stance taken off, so that what is left follows its inward change. */
const toleranceDeg = 2;

describe('measure(track, setup) of hip abduction on a bent stance leg', () => {
  it.each(sides)('counts by the free leg and judges the stance knee, working side %s', (side) => {
    const { track, repetitions } = filmPerson({
      task: 'hip-abduction-on-bent-leg',
      side,
      repetitions: [{ peakDeg: 3 }, { peakDeg: 12 }, { peakDeg: 7 }],
    });
    const measured = measure(track, { task: 'hip-abduction-on-bent-leg', side });
    expect(measured.repetitions.map(({ completeness }) => completeness)).toEqual([
      'complete',
      'complete',
      'complete',
    ]);
    measured.repetitions.forEach(({ ranges, events }, i) => {
      const { frontal, events: trueEvents } = repetitions[i]!;
      expect(Math.abs(ranges['knee-angle'].max!.value - frontal.maxDeg)).toBeLessThan(toleranceDeg);
      expect(events.startMs).toBeLessThan(events.bottomMs!);
      expect(events.bottomMs).toBeLessThan(events.endMs);
      expect(Math.abs(events.startMs - trueEvents.startMs!)).toBeLessThan(150);
    });
    expect(measured.notes).toEqual([]);
  });
});
